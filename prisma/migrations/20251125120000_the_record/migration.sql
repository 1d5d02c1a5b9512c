-- Written by `prisma migrate diff`, then by hand: columns are added rather than the log laid out anew, so that its
-- triggers stay; the CHECKs; and the triggers at the end.

-- The log tells more than edits now.
ALTER TABLE "Change" ADD COLUMN "kind" TEXT NOT NULL DEFAULT 'edit' CHECK ("kind" IN ('edit', 'mark', 'unmark', 'freeze', 'sign', 'seal', 'link', 'reader', 'file', 'message'));
ALTER TABLE "Change" ADD COLUMN "detail" TEXT;

-- CreateTable
CREATE TABLE "SealedPaper" (
    "revisionId" TEXT NOT NULL PRIMARY KEY,
    "bytes" BLOB NOT NULL,
    "sha256" TEXT NOT NULL CHECK (length("sha256") = 64),
    "certificate" TEXT NOT NULL CHECK (length("certificate") = 64),
    "historyEntry" INTEGER NOT NULL CHECK ("historyEntry" >= 0),
    "historyHash" TEXT NOT NULL CHECK (length("historyHash") = 64),
    "sealedAt" DATETIME NOT NULL,
    CONSTRAINT "SealedPaper_revisionId_fkey" FOREIGN KEY ("revisionId") REFERENCES "Revision" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT
);

-- CreateTable
CREATE TABLE "Message" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "notebookId" TEXT NOT NULL,
    "itemKey" TEXT NOT NULL,
    "household" TEXT NOT NULL CHECK ("household" IN ('a', 'b')),
    "kind" TEXT NOT NULL CHECK ("kind" IN ('remark', 'objection', 'proposal', 'answer')),
    "text" TEXT NOT NULL,
    "answers" INTEGER,
    "at" DATETIME NOT NULL,
    CONSTRAINT "Message_notebookId_fkey" FOREIGN KEY ("notebookId") REFERENCES "Notebook" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT,
    CONSTRAINT "Message_answers_fkey" FOREIGN KEY ("answers") REFERENCES "Message" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT
);

-- CreateTable
CREATE TABLE "ReaderLink" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "notebookId" TEXT NOT NULL,
    "tokenHash" TEXT NOT NULL CHECK (length("tokenHash") = 64),
    "content" TEXT NOT NULL CHECK ("content" IN ('summary', 'costs', 'everything')),
    "label" TEXT NOT NULL,
    "createdAt" DATETIME NOT NULL,
    "createdBy" TEXT NOT NULL CHECK ("createdBy" IN ('a', 'b')),
    "expiresAt" DATETIME NOT NULL,
    "revokedAt" DATETIME,
    "revokedBy" TEXT CHECK ("revokedBy" IN ('a', 'b')),
    CONSTRAINT "ReaderLink_notebookId_fkey" FOREIGN KEY ("notebookId") REFERENCES "Notebook" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT
);

-- CreateTable
CREATE TABLE "ReaderVisit" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "readerLinkId" TEXT NOT NULL,
    "what" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    CONSTRAINT "ReaderVisit_readerLinkId_fkey" FOREIGN KEY ("readerLinkId") REFERENCES "ReaderLink" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT
);

-- CreateTable
CREATE TABLE "StoredFile" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "notebookId" TEXT NOT NULL,
    "sha256" TEXT NOT NULL CHECK (length("sha256") = 64),
    "name" TEXT NOT NULL,
    "mediaType" TEXT NOT NULL CHECK ("mediaType" IN ('image/jpeg', 'image/png', 'image/webp', 'application/pdf')),
    "size" INTEGER NOT NULL CHECK ("size" > 0),
    "kind" TEXT NOT NULL CHECK ("kind" IN ('before', 'after', 'survey', 'permit', 'receipt', 'other')),
    "caption" TEXT NOT NULL,
    "itemKey" TEXT,
    "household" TEXT NOT NULL CHECK ("household" IN ('a', 'b')),
    "addedAt" DATETIME NOT NULL,
    "removedAt" DATETIME,
    "removedBy" TEXT CHECK ("removedBy" IN ('a', 'b')),
    CONSTRAINT "StoredFile_notebookId_fkey" FOREIGN KEY ("notebookId") REFERENCES "Notebook" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT
);

-- CreateIndex
CREATE INDEX "Message_notebookId_itemKey_id_idx" ON "Message"("notebookId", "itemKey", "id");

-- CreateIndex
CREATE UNIQUE INDEX "ReaderLink_tokenHash_key" ON "ReaderLink"("tokenHash");

-- CreateIndex
CREATE INDEX "ReaderLink_notebookId_idx" ON "ReaderLink"("notebookId");

-- CreateIndex
CREATE INDEX "ReaderVisit_readerLinkId_id_idx" ON "ReaderVisit"("readerLinkId", "id");

-- CreateIndex
CREATE INDEX "StoredFile_notebookId_addedAt_idx" ON "StoredFile"("notebookId", "addedAt");

-- What is on record stays on record.
CREATE TRIGGER "SealedPaper_never_altered" BEFORE UPDATE ON "SealedPaper"
BEGIN
    SELECT RAISE(ABORT, 'a sealed paper is never altered');
END;

CREATE TRIGGER "SealedPaper_never_deleted" BEFORE DELETE ON "SealedPaper"
BEGIN
    SELECT RAISE(ABORT, 'a sealed paper is never deleted');
END;

CREATE TRIGGER "Message_never_altered" BEFORE UPDATE ON "Message"
BEGIN
    SELECT RAISE(ABORT, 'what was said is never altered');
END;

CREATE TRIGGER "Message_never_deleted" BEFORE DELETE ON "Message"
BEGIN
    SELECT RAISE(ABORT, 'what was said is never deleted');
END;

CREATE TRIGGER "ReaderVisit_never_altered" BEFORE UPDATE ON "ReaderVisit"
BEGIN
    SELECT RAISE(ABORT, 'an opening on record is never altered');
END;

CREATE TRIGGER "ReaderVisit_never_deleted" BEFORE DELETE ON "ReaderVisit"
BEGIN
    SELECT RAISE(ABORT, 'an opening on record is never deleted');
END;

-- An answer stays beside the item of what it answers.
CREATE TRIGGER "Message_answers_its_own_item" BEFORE INSERT ON "Message"
WHEN NEW."answers" IS NOT NULL
    AND NOT EXISTS (
        SELECT 1 FROM "Message"
        WHERE "id" = NEW."answers" AND "notebookId" = NEW."notebookId" AND "itemKey" = NEW."itemKey"
    )
BEGIN
    SELECT RAISE(ABORT, 'an answer stands beside the item of what it answers');
END;

-- What a reader may see is said once; that it ends is said once as well.
CREATE TRIGGER "ReaderLink_said_once" BEFORE UPDATE ON "ReaderLink"
WHEN NEW."id" IS NOT OLD."id"
    OR NEW."notebookId" IS NOT OLD."notebookId"
    OR NEW."tokenHash" IS NOT OLD."tokenHash"
    OR NEW."content" IS NOT OLD."content"
    OR NEW."label" IS NOT OLD."label"
    OR NEW."createdAt" IS NOT OLD."createdAt"
    OR NEW."createdBy" IS NOT OLD."createdBy"
    OR NEW."expiresAt" IS NOT OLD."expiresAt"
    OR (OLD."revokedAt" IS NOT NULL AND (NEW."revokedAt" IS NOT OLD."revokedAt" OR NEW."revokedBy" IS NOT OLD."revokedBy"))
BEGIN
    SELECT RAISE(ABORT, 'a reader''s link is only ever revoked, once');
END;

CREATE TRIGGER "StoredFile_said_once" BEFORE UPDATE ON "StoredFile"
WHEN NEW."id" IS NOT OLD."id"
    OR NEW."notebookId" IS NOT OLD."notebookId"
    OR NEW."sha256" IS NOT OLD."sha256"
    OR NEW."name" IS NOT OLD."name"
    OR NEW."mediaType" IS NOT OLD."mediaType"
    OR NEW."size" IS NOT OLD."size"
    OR NEW."kind" IS NOT OLD."kind"
    OR NEW."caption" IS NOT OLD."caption"
    OR NEW."itemKey" IS NOT OLD."itemKey"
    OR NEW."household" IS NOT OLD."household"
    OR NEW."addedAt" IS NOT OLD."addedAt"
    OR (OLD."removedAt" IS NOT NULL AND (NEW."removedAt" IS NOT OLD."removedAt" OR NEW."removedBy" IS NOT OLD."removedBy"))
BEGIN
    SELECT RAISE(ABORT, 'a file is only ever taken away, once');
END;

CREATE TRIGGER "StoredFile_never_deleted" BEFORE DELETE ON "StoredFile"
BEGIN
    SELECT RAISE(ABORT, 'a file on record is never deleted');
END;

CREATE TRIGGER "ReaderLink_never_deleted" BEFORE DELETE ON "ReaderLink"
BEGIN
    SELECT RAISE(ABORT, 'a reader''s link on record is never deleted');
END;
