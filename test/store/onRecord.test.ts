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

  test('a mark in a notebook that is not there', async () => {
    await refused((tables) =>
      tables.mark.create({
        data: { notebookId: 'nowhere', itemKey: 'line', household: 'a', fingerprint: 'f', at },
      }),
    )
  })
})
