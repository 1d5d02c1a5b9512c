import { beforeEach, describe, expect, test } from 'vitest'
import { database, type Tables } from '../../lib/store/database.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'
import { temporaryDatabaseForEachTest } from './temporaryDatabase.ts'

temporaryDatabaseForEachTest()

const at = new Date('2025-06-01T18:00:00Z')
const later = new Date('2025-06-02T18:00:00Z')
const text = 'what was agreed'
const sha256 = sha256Hex(text)

beforeEach(async () => {
  await database().write(async (tables) => {
    await tables.notebook.create({
      data: { id: 'n', document: '{}', example: false, createdAt: at, updatedAt: at },
    })
    await tables.change.create({
      data: { notebookId: 'n', edit: 1, at, household: 'a', itemKey: 'line', before: null, after: '{}' },
    })
    await tables.revision.create({
      data: { id: 'r', notebookId: 'n', number: 1, canonicalText: text, sha256, frozenAt: at, frozenBy: 'a' },
    })
    await tables.signature.create({ data: { id: 's', ...signature, sha256 } })
    await tables.entryKey.create({
      data: {
        id: 'k',
        notebookId: 'n',
        household: 'a',
        kind: 'link',
        tokenHash: sha256Hex('k'),
        createdAt: at,
      },
    })
    await tables.session.create({
      data: {
        id: 'i',
        tokenHash: sha256Hex('i'),
        notebookId: 'n',
        household: 'a',
        entryKeyId: 'k',
        createdAt: at,
      },
    })
    await tables.sealedPaper.create({
      data: {
        revisionId: 'r',
        bytes: Uint8Array.of(1, 2, 3),
        sha256,
        certificate: sha256,
        historyEntry: 1,
        historyHash: sha256,
        sealedAt: at,
      },
    })
    await tables.message.create({
      data: { notebookId: 'n', itemKey: 'line', household: 'a', kind: 'remark', text: 'Is this right?', at },
    })
    await tables.readerLink.create({
      data: {
        id: 'l',
        notebookId: 'n',
        tokenHash: sha256Hex('l'),
        content: 'summary',
        label: 'permit office',
        createdAt: at,
        createdBy: 'a',
        expiresAt: later,
      },
    })
    await tables.readerVisit.create({ data: { readerLinkId: 'l', what: 'page', at } })
    await tables.storedFile.create({
      data: {
        id: 'f',
        notebookId: 'n',
        sha256,
        name: 'old fence.jpg',
        mediaType: 'image/jpeg',
        size: 3,
        kind: 'before',
        caption: '',
        household: 'a',
        addedAt: at,
      },
    })
  })
})

const signature = {
  revisionId: 'r',
  household: 'a',
  partyIndex: 0,
  partyName: 'Ida Marrow',
  capacity: 'owner',
  typedName: 'Ida Marrow',
  intent: 'I sign this agreement.',
  signedAt: at,
}

async function refused(work: (tables: Tables) => Promise<unknown>): Promise<void> {
  await expect(database().write(work)).rejects.toThrow()
}

async function everything(): Promise<unknown> {
  return database().read(async (tables) => [
    await tables.change.findMany(),
    await tables.revision.findMany(),
    await tables.signature.findMany(),
    await tables.entryKey.findMany(),
    await tables.session.findMany(),
    await tables.sealedPaper.findMany(),
    await tables.message.findMany(),
    await tables.readerLink.findMany(),
    await tables.readerVisit.findMany(),
    await tables.storedFile.findMany(),
  ])
}

describe('what is on record stays on record', () => {
  test.each([
    ['a change', 'UPDATE "Change" SET "after" = NULL', 'a change on record is never altered'],
    ['a change', 'DELETE FROM "Change"', 'a change on record is never deleted'],
    ['a revision', `UPDATE "Revision" SET "canonicalText" = 'x'`, 'a frozen revision is never altered'],
    ['a revision', 'DELETE FROM "Revision"', 'a frozen revision is never deleted'],
    ['a signature', `UPDATE "Signature" SET "typedName" = 'x'`, 'a signature is never altered'],
    ['a signature', 'DELETE FROM "Signature"', 'a signature is never deleted'],
    ['a key', `UPDATE "EntryKey" SET "household" = 'b'`, 'an entry key is only ever used or revoked'],
    ['a session', `UPDATE "Session" SET "household" = 'b'`, 'a session is only ever ended'],
    ['a sealed paper', `UPDATE "SealedPaper" SET "bytes" = x'00'`, 'a sealed paper is never altered'],
    ['a sealed paper', 'DELETE FROM "SealedPaper"', 'a sealed paper is never deleted'],
    ['a message', `UPDATE "Message" SET "text" = 'x'`, 'what was said is never altered'],
    ['a message', 'DELETE FROM "Message"', 'what was said is never deleted'],
    ['a reader’s link', `UPDATE "ReaderLink" SET "content" = 'everything'`, 'only ever revoked'],
    ['a reader’s link', `UPDATE "ReaderLink" SET "expiresAt" = 9999999999999`, 'only ever revoked'],
    ['a reader’s link', 'DELETE FROM "ReaderLink"', 'never deleted'],
    ['an opening', `UPDATE "ReaderVisit" SET "what" = 'x'`, 'an opening on record is never altered'],
    ['an opening', 'DELETE FROM "ReaderVisit"', 'an opening on record is never deleted'],
    ['a file', `UPDATE "StoredFile" SET "sha256" = '${'0'.repeat(64)}'`, 'a file is only ever taken away'],
    ['a file', 'DELETE FROM "StoredFile"', 'a file on record is never deleted'],
  ])('%s refuses %s', async (_what, sql, why) => {
    const before = await everything()
    await expect(database().write((tables) => tables.$executeRawUnsafe(sql))).rejects.toThrow(why)
    expect(await everything()).toEqual(before)
  })

  test('a key that was revoked stays revoked, and a session that ended stays ended', async () => {
    await database().write(async (tables) => {
      await tables.entryKey.update({ where: { id: 'k' }, data: { revokedAt: at } })
      await tables.session.update({ where: { id: 'i' }, data: { endedAt: at } })
    })
    await refused((tables) => tables.entryKey.update({ where: { id: 'k' }, data: { revokedAt: null } }))
    await database().write((tables) =>
      tables.readerLink.update({ where: { id: 'l' }, data: { revokedAt: at, revokedBy: 'b' } }),
    )
    await refused((tables) => tables.readerLink.update({ where: { id: 'l' }, data: { revokedAt: null } }))
    await database().write((tables) =>
      tables.storedFile.update({ where: { id: 'f' }, data: { removedAt: at, removedBy: 'b' } }),
    )
    await refused((tables) => tables.storedFile.update({ where: { id: 'f' }, data: { removedAt: null } }))
    await refused((tables) => tables.session.update({ where: { id: 'i' }, data: { endedAt: later } }))
  })

  test('a notebook that anything hangs on is not deleted', async () => {
    await refused((tables) => tables.notebook.delete({ where: { id: 'n' } }))
  })
})

describe('what cannot be put on record', () => {
  test('a signature under another text than its revision', async () => {
    await refused((tables) =>
      tables.signature.create({ data: { ...signature, partyIndex: 1, sha256: sha256Hex('another text') } }),
    )
  })

  test('two signatures of one party under one revision', async () => {
    await refused((tables) => tables.signature.create({ data: { ...signature, sha256 } }))
  })

  test('two revisions of one number', async () => {
    await refused((tables) =>
      tables.revision.create({
        data: { notebookId: 'n', number: 1, canonicalText: text, sha256, frozenAt: at, frozenBy: 'b' },
      }),
    )
  })

  test('a third household', async () => {
    await refused((tables) =>
      tables.mark.create({
        data: { notebookId: 'n', itemKey: 'line', household: 'c', fingerprint: 'f', at },
      }),
    )
  })

  test('a key of a third kind', async () => {
    await refused((tables) =>
      tables.entryKey.create({
        data: {
          notebookId: 'n',
          household: 'a',
          kind: 'skeleton',
          tokenHash: sha256Hex('skeleton'),
          createdAt: at,
        },
      }),
    )
  })

  test('a second locked copy of one revision', async () => {
    await refused((tables) =>
      tables.sealedPaper.create({
        data: {
          revisionId: 'r',
          bytes: Uint8Array.of(4),
          sha256,
          certificate: sha256,
          historyEntry: 1,
          historyHash: sha256,
          sealedAt: at,
        },
      }),
    )
  })

  test('an answer beside another item than what it answers', async () => {
    const asked = await database().read((tables) => tables.message.findFirstOrThrow())
    await refused((tables) =>
      tables.message.create({
        data: {
          notebookId: 'n',
          itemKey: 'caps',
          household: 'b',
          kind: 'answer',
          text: 'Yes.',
          answers: asked.id,
          at,
        },
      }),
    )
  })

  test('a mark in a notebook that is not there', async () => {
    await refused((tables) =>
      tables.mark.create({
        data: { notebookId: 'nowhere', itemKey: 'line', household: 'a', fingerprint: 'f', at },
      }),
    )
  })
})
