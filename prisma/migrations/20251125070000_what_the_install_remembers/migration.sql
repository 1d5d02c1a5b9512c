-- Written by `prisma migrate diff`, then by hand: the CHECKs, and the triggers at the end, which Prisma's schema
-- language cannot say. A later migration that lays a table out anew must bring its CHECKs and triggers along.

-- CreateTable
CREATE TABLE "Notebook" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "document" TEXT NOT NULL,
    "edit" INTEGER NOT NULL DEFAULT 0,
    "example" BOOLEAN NOT NULL,
    "createdAt" DATETIME NOT NULL,
    "updatedAt" DATETIME NOT NULL
);

-- CreateTable
CREATE TABLE "EntryKey" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "notebookId" TEXT NOT NULL,
    "household" TEXT NOT NULL CHECK ("household" IN ('a', 'b')),
    "kind" TEXT NOT NULL CHECK ("kind" IN ('link', 'invitation')),
    "tokenHash" TEXT NOT NULL CHECK (length("tokenHash") = 64),
    "createdAt" DATETIME NOT NULL,
    "usedAt" DATETIME,
    "revokedAt" DATETIME,
    CONSTRAINT "EntryKey_notebookId_fkey" FOREIGN KEY ("notebookId") REFERENCES "Notebook" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT
);

-- CreateTable
CREATE TABLE "Session" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "tokenHash" TEXT NOT NULL CHECK (length("tokenHash") = 64),
    "notebookId" TEXT NOT NULL,
    "household" TEXT NOT NULL CHECK ("household" IN ('a', 'b')),
    "entryKeyId" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL,
    "endedAt" DATETIME,
    CONSTRAINT "Session_notebookId_fkey" FOREIGN KEY ("notebookId") REFERENCES "Notebook" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT,
    CONSTRAINT "Session_entryKeyId_fkey" FOREIGN KEY ("entryKeyId") REFERENCES "EntryKey" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT
);

-- CreateTable
CREATE TABLE "Mark" (
    "notebookId" TEXT NOT NULL,
    "itemKey" TEXT NOT NULL,
    "household" TEXT NOT NULL CHECK ("household" IN ('a', 'b')),
    "fingerprint" TEXT NOT NULL,
    "at" DATETIME NOT NULL,

    PRIMARY KEY ("notebookId", "itemKey", "household"),
    CONSTRAINT "Mark_notebookId_fkey" FOREIGN KEY ("notebookId") REFERENCES "Notebook" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT
);

-- CreateTable
CREATE TABLE "Change" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "notebookId" TEXT NOT NULL,
    "edit" INTEGER NOT NULL,
    "at" DATETIME NOT NULL,
    "household" TEXT NOT NULL CHECK ("household" IN ('a', 'b')),
    "itemKey" TEXT NOT NULL,
    "previousKey" TEXT,
    "before" TEXT,
    "after" TEXT,
    CONSTRAINT "Change_notebookId_fkey" FOREIGN KEY ("notebookId") REFERENCES "Notebook" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT
);

-- CreateTable
CREATE TABLE "Revision" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "notebookId" TEXT NOT NULL,
    "number" INTEGER NOT NULL CHECK ("number" > 0),
    "canonicalText" TEXT NOT NULL,
    "sha256" TEXT NOT NULL CHECK (length("sha256") = 64),
    "frozenAt" DATETIME NOT NULL,
    "frozenBy" TEXT NOT NULL CHECK ("frozenBy" IN ('a', 'b')),
    CONSTRAINT "Revision_notebookId_fkey" FOREIGN KEY ("notebookId") REFERENCES "Notebook" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT
);

-- CreateTable
CREATE TABLE "Signature" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "revisionId" TEXT NOT NULL,
    "household" TEXT NOT NULL CHECK ("household" IN ('a', 'b')),
    "partyIndex" INTEGER NOT NULL CHECK ("partyIndex" >= 0),
    "partyName" TEXT NOT NULL,
    "capacity" TEXT NOT NULL,
    "typedName" TEXT NOT NULL,
    "intent" TEXT NOT NULL,
    "drawing" TEXT,
    "sha256" TEXT NOT NULL CHECK (length("sha256") = 64),
    "signedAt" DATETIME NOT NULL,
    CONSTRAINT "Signature_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "Revision" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT
);

-- CreateTable
CREATE TABLE "WriteLock" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT CHECK ("id" = 1),
    "taken" INTEGER NOT NULL
);

-- CreateIndex
CREATE UNIQUE INDEX "EntryKey_tokenHash_key" ON "EntryKey"("tokenHash");

-- CreateIndex
CREATE INDEX "EntryKey_notebookId_household_kind_idx" ON "EntryKey"("notebookId", "household", "kind");

-- CreateIndex
CREATE UNIQUE INDEX "Session_tokenHash_key" ON "Session"("tokenHash");

-- CreateIndex
CREATE INDEX "Session_notebookId_household_idx" ON "Session"("notebookId", "household");

-- CreateIndex
CREATE INDEX "Change_notebookId_id_idx" ON "Change"("notebookId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "Revision_notebookId_number_key" ON "Revision"("notebookId", "number");

-- CreateIndex
CREATE UNIQUE INDEX "Signature_revisionId_household_partyIndex_key" ON "Signature"("revisionId", "household", "partyIndex");

-- What is on record stays on record.
CREATE TRIGGER "Change_never_altered" BEFORE UPDATE ON "Change"
BEGIN
    SELECT RAISE(ABORT, 'a change on record is never altered');
END;

CREATE TRIGGER "Change_never_deleted" BEFORE DELETE ON "Change"
BEGIN
    SELECT RAISE(ABORT, 'a change on record is never deleted');
END;

CREATE TRIGGER "Revision_never_altered" BEFORE UPDATE ON "Revision"
BEGIN
    SELECT RAISE(ABORT, 'a frozen revision is never altered');
END;

CREATE TRIGGER "Revision_never_deleted" BEFORE DELETE ON "Revision"
BEGIN
    SELECT RAISE(ABORT, 'a frozen revision is never deleted');
END;

CREATE TRIGGER "Signature_never_altered" BEFORE UPDATE ON "Signature"
BEGIN
    SELECT RAISE(ABORT, 'a signature is never altered');
END;

CREATE TRIGGER "Signature_never_deleted" BEFORE DELETE ON "Signature"
BEGIN
    SELECT RAISE(ABORT, 'a signature is never deleted');
END;

-- A signature is under the very text of its revision.
CREATE TRIGGER "Signature_under_its_revision" BEFORE INSERT ON "Signature"
WHEN NEW."sha256" IS NOT (SELECT "sha256" FROM "Revision" WHERE "id" = NEW."revisionId")
BEGIN
    SELECT RAISE(ABORT, 'a signature carries the hash of its revision');
END;

-- Whom a key lets in is said once; used and revoked are said once as well.
CREATE TRIGGER "EntryKey_said_once" BEFORE UPDATE ON "EntryKey"
WHEN NEW."id" IS NOT OLD."id"
    OR NEW."notebookId" IS NOT OLD."notebookId"
    OR NEW."household" IS NOT OLD."household"
    OR NEW."kind" IS NOT OLD."kind"
    OR NEW."tokenHash" IS NOT OLD."tokenHash"
    OR NEW."createdAt" IS NOT OLD."createdAt"
    OR (OLD."usedAt" IS NOT NULL AND NEW."usedAt" IS NOT OLD."usedAt")
    OR (OLD."revokedAt" IS NOT NULL AND NEW."revokedAt" IS NOT OLD."revokedAt")
BEGIN
    SELECT RAISE(ABORT, 'an entry key is only ever used or revoked, each once');
END;

CREATE TRIGGER "Session_said_once" BEFORE UPDATE ON "Session"
WHEN NEW."id" IS NOT OLD."id"
    OR NEW."tokenHash" IS NOT OLD."tokenHash"
    OR NEW."notebookId" IS NOT OLD."notebookId"
    OR NEW."household" IS NOT OLD."household"
    OR NEW."entryKeyId" IS NOT OLD."entryKeyId"
    OR NEW."createdAt" IS NOT OLD."createdAt"
    OR (OLD."endedAt" IS NOT NULL AND NEW."endedAt" IS NOT OLD."endedAt")
BEGIN
    SELECT RAISE(ABORT, 'a session is only ever ended, once');
END;
