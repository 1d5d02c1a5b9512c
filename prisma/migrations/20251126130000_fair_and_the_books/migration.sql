-- Written by `prisma migrate diff`, then by hand: the CHECKs; the log, laid out anew since SQLite can't widen a CHECK; and
-- the triggers at the end.

-- CreateTable
CREATE TABLE "HeldBack" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "notebookId" TEXT NOT NULL,
    "household" TEXT NOT NULL CHECK ("household" IN ('a', 'b')),
    "subject" TEXT NOT NULL,
    "content" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    CONSTRAINT "HeldBack_notebookId_fkey" FOREIGN KEY ("notebookId") REFERENCES "Notebook" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT
);

-- CreateTable
CREATE TABLE "FirstAnswer" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "notebookId" TEXT NOT NULL,
    "household" TEXT NOT NULL CHECK ("household" IN ('a', 'b')),
    "answer" TEXT NOT NULL CHECK ("answer" IN ('fine', 'fine without money', 'a question', 'not now', 'no')),
    "text" TEXT NOT NULL,
    "until" TEXT,
    "at" DATETIME NOT NULL,
    CONSTRAINT "FirstAnswer_notebookId_fkey" FOREIGN KEY ("notebookId") REFERENCES "Notebook" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT
);

-- CreateTable
CREATE TABLE "Proposal" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "notebookId" TEXT NOT NULL,
    "household" TEXT NOT NULL CHECK ("household" IN ('a', 'b')),
    "items" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "answers" INTEGER,
    "at" DATETIME NOT NULL,
    CONSTRAINT "Proposal_notebookId_fkey" FOREIGN KEY ("notebookId") REFERENCES "Notebook" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT,
    CONSTRAINT "Proposal_answers_fkey" FOREIGN KEY ("answers") REFERENCES "Proposal" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT
);

-- CreateTable
CREATE TABLE "ProposalReply" (
    "proposalId" INTEGER NOT NULL PRIMARY KEY,
    "household" TEXT NOT NULL CHECK ("household" IN ('a', 'b')),
    "kind" TEXT NOT NULL CHECK ("kind" IN ('accepted', 'declined', 'answered', 'withdrawn')),
    "text" TEXT NOT NULL,
    "at" DATETIME NOT NULL,
    CONSTRAINT "ProposalReply_proposalId_fkey" FOREIGN KEY ("proposalId") REFERENCES "Proposal" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT
);

-- CreateTable
CREATE TABLE "FinalAccount" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "notebookId" TEXT NOT NULL,
    "number" INTEGER NOT NULL,
    "canonicalText" TEXT NOT NULL,
    "sha256" TEXT NOT NULL CHECK (length("sha256") = 64),
    "frozenAt" DATETIME NOT NULL,
    "frozenBy" TEXT NOT NULL CHECK ("frozenBy" IN ('a', 'b')),
    CONSTRAINT "FinalAccount_notebookId_fkey" FOREIGN KEY ("notebookId") REFERENCES "Notebook" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT
);

-- CreateTable
CREATE TABLE "AccountSignature" (
    "id" TEXT NOT NULL PRIMARY KEY,
    "accountId" TEXT NOT NULL,
    "household" TEXT NOT NULL CHECK ("household" IN ('a', 'b')),
    "partyIndex" INTEGER NOT NULL,
    "partyName" TEXT NOT NULL,
    "capacity" TEXT NOT NULL,
    "typedName" TEXT NOT NULL,
    "intent" TEXT NOT NULL,
    "drawing" TEXT,
    "sha256" TEXT NOT NULL CHECK (length("sha256") = 64),
    "signedAt" DATETIME NOT NULL,
    CONSTRAINT "AccountSignature_accountId_fkey" FOREIGN KEY ("accountId") REFERENCES "FinalAccount" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT
);

-- CreateTable
CREATE TABLE "Look" (
    "notebookId" TEXT NOT NULL,
    "household" TEXT NOT NULL CHECK ("household" IN ('a', 'b')),
    "newest" INTEGER NOT NULL CHECK ("newest" >= 0),
    "at" DATETIME NOT NULL,

    PRIMARY KEY ("notebookId", "household"),
    CONSTRAINT "Look_notebookId_fkey" FOREIGN KEY ("notebookId") REFERENCES "Notebook" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT
);

-- CreateIndex
CREATE INDEX "HeldBack_notebookId_subject_household_id_idx" ON "HeldBack"("notebookId", "subject", "household", "id");

-- CreateIndex
CREATE INDEX "FirstAnswer_notebookId_id_idx" ON "FirstAnswer"("notebookId", "id");

-- CreateIndex
CREATE INDEX "Proposal_notebookId_id_idx" ON "Proposal"("notebookId", "id");

-- CreateIndex
CREATE UNIQUE INDEX "FinalAccount_notebookId_number_key" ON "FinalAccount"("notebookId", "number");

-- CreateIndex
CREATE UNIQUE INDEX "AccountSignature_accountId_household_partyIndex_key" ON "AccountSignature"("accountId", "household", "partyIndex");

-- The log tells of more than before. Its rows are copied as they are, ids included: its chain of hashes is worked out of them.
DROP TRIGGER "Change_never_altered";
DROP TRIGGER "Change_never_deleted";
DROP INDEX "Change_notebookId_id_idx";
ALTER TABLE "Change" RENAME TO "Change_before";
CREATE TABLE "Change" (
    "id" INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    "notebookId" TEXT NOT NULL,
    "edit" INTEGER NOT NULL,
    "kind" TEXT NOT NULL DEFAULT 'edit' CHECK ("kind" IN ('edit', 'mark', 'unmark', 'freeze', 'sign', 'seal', 'link', 'reader', 'file', 'message', 'held back', 'first answer', 'proposal', 'reply', 'books', 'account')),
    "detail" TEXT,
    "at" DATETIME NOT NULL,
    "household" TEXT NOT NULL CHECK ("household" IN ('a', 'b')),
    "itemKey" TEXT NOT NULL,
    "previousKey" TEXT,
    "before" TEXT,
    "after" TEXT,
    CONSTRAINT "Change_notebookId_fkey" FOREIGN KEY ("notebookId") REFERENCES "Notebook" ("id") ON DELETE RESTRICT ON UPDATE RESTRICT
);
INSERT INTO "Change" ("id", "notebookId", "edit", "kind", "detail", "at", "household", "itemKey", "previousKey", "before", "after")
SELECT "id", "notebookId", "edit", "kind", "detail", "at", "household", "itemKey", "previousKey", "before", "after" FROM "Change_before";
DROP TABLE "Change_before";
CREATE INDEX "Change_notebookId_id_idx" ON "Change"("notebookId", "id");

-- What is on record stays on record.
CREATE TRIGGER "Change_never_altered" BEFORE UPDATE ON "Change"
BEGIN
    SELECT RAISE(ABORT, 'a change on record is never altered');
END;

CREATE TRIGGER "Change_never_deleted" BEFORE DELETE ON "Change"
BEGIN
    SELECT RAISE(ABORT, 'a change on record is never deleted');
END;

CREATE TRIGGER "HeldBack_never_altered" BEFORE UPDATE ON "HeldBack"
BEGIN
    SELECT RAISE(ABORT, 'what was held back is never altered');
END;

CREATE TRIGGER "HeldBack_never_deleted" BEFORE DELETE ON "HeldBack"
BEGIN
    SELECT RAISE(ABORT, 'what was held back is never deleted');
END;

CREATE TRIGGER "FirstAnswer_never_altered" BEFORE UPDATE ON "FirstAnswer"
BEGIN
    SELECT RAISE(ABORT, 'an answer on record is never altered');
END;

CREATE TRIGGER "FirstAnswer_never_deleted" BEFORE DELETE ON "FirstAnswer"
BEGIN
    SELECT RAISE(ABORT, 'an answer on record is never deleted');
END;

CREATE TRIGGER "Proposal_never_altered" BEFORE UPDATE ON "Proposal"
BEGIN
    SELECT RAISE(ABORT, 'a proposal on record is never altered');
END;

CREATE TRIGGER "Proposal_never_deleted" BEFORE DELETE ON "Proposal"
BEGIN
    SELECT RAISE(ABORT, 'a proposal on record is never deleted');
END;

CREATE TRIGGER "ProposalReply_never_altered" BEFORE UPDATE ON "ProposalReply"
BEGIN
    SELECT RAISE(ABORT, 'a reply on record is never altered');
END;

CREATE TRIGGER "ProposalReply_never_deleted" BEFORE DELETE ON "ProposalReply"
BEGIN
    SELECT RAISE(ABORT, 'a reply on record is never deleted');
END;

CREATE TRIGGER "FinalAccount_never_altered" BEFORE UPDATE ON "FinalAccount"
BEGIN
    SELECT RAISE(ABORT, 'a final account is never altered');
END;

CREATE TRIGGER "FinalAccount_never_deleted" BEFORE DELETE ON "FinalAccount"
BEGIN
    SELECT RAISE(ABORT, 'a final account is never deleted');
END;

CREATE TRIGGER "AccountSignature_never_altered" BEFORE UPDATE ON "AccountSignature"
BEGIN
    SELECT RAISE(ABORT, 'a signature is never altered');
END;

CREATE TRIGGER "AccountSignature_never_deleted" BEFORE DELETE ON "AccountSignature"
BEGIN
    SELECT RAISE(ABORT, 'a signature is never deleted');
END;

-- A proposal answers one of the same notebook.
CREATE TRIGGER "Proposal_answers_its_own_notebook" BEFORE INSERT ON "Proposal"
WHEN NEW."answers" IS NOT NULL
    AND NOT EXISTS (SELECT 1 FROM "Proposal" WHERE "id" = NEW."answers" AND "notebookId" = NEW."notebookId")
BEGIN
    SELECT RAISE(ABORT, 'a proposal answers one of the same notebook');
END;

-- Neither household can accept or decline in the other's name: only a withdrawal is its own.
CREATE TRIGGER "ProposalReply_by_the_other" BEFORE INSERT ON "ProposalReply"
WHEN (NEW."kind" = 'withdrawn') IS NOT (NEW."household" = (SELECT "household" FROM "Proposal" WHERE "id" = NEW."proposalId"))
BEGIN
    SELECT RAISE(ABORT, 'a proposal is answered by the other household, and withdrawn by its own');
END;

CREATE TRIGGER "Look_never_back" BEFORE UPDATE ON "Look"
WHEN NEW."newest" < OLD."newest" OR NEW."notebookId" IS NOT OLD."notebookId" OR NEW."household" IS NOT OLD."household"
BEGIN
    SELECT RAISE(ABORT, 'what was seen stays seen');
END;
