import { beforeEach, describe, expect, test } from 'vitest'
import { database } from '../../lib/store/database.ts'
import {
  accountSignaturesOf,
  accountsOf,
  freezeAccount,
  type StoredAccount,
  signFinalAccount,
} from '../../lib/store/finalAccounts.ts'
import { historyOf } from '../../lib/store/historyChain.ts'
import { createNotebook } from '../../lib/store/notebooks.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'
import { temporaryDatabaseForEachTest } from './temporaryDatabase.ts'

temporaryDatabaseForEachTest()

const at = new Date('2027-06-01T18:00:00Z')
const later = new Date('2027-06-03T18:00:00Z')
let id: string

beforeEach(async () => {
  id = (await createNotebook({ document: '{"title":"Fence"}', example: false, at })).id
})

async function freeze(canonicalText: string) {
  const frozen = await freezeAccount({
    id,
    household: 'a',
    at,
    build: () => ({ canonicalText, sha256: sha256Hex(canonicalText) }),
    stands: (newest, text) => newest === text,
  })
  if ('refused' in frozen) throw new Error('not refused here')
  return frozen
}

function sign(account: StoredAccount, more: Partial<Parameters<typeof signFinalAccount>[0]> = {}) {
  return signFinalAccount({
    notebookId: id,
    accountId: account.id,
    sha256: account.sha256,
    household: 'b',
    partyIndex: 0,
    partyName: 'Ida Marrow',
    capacity: 'owner',
    typedName: 'ida marrow',
    intent: 'I sign this final account.',
    at: later,
    isCurrent: () => true,
    ...more,
  })
}

describe('a final account', () => {
  test('is frozen with its text, its hash, and who drew it up when, and that goes on record', async () => {
    const { account, isNew } = await freeze('first')
    expect(isNew).toBe(true)
    expect(account).toEqual({
      id: account.id,
      notebookId: id,
      number: 1,
      canonicalText: 'first',
      sha256: sha256Hex('first'),
      frozenAt: at,
      frozenBy: 'a',
    })
    const newest = (await historyOf(id)).at(-1)
    expect(newest).toMatchObject({
      kind: 'account',
      household: 'a',
      detail: { account: 'drawn up', number: 1, sha256: sha256Hex('first') },
    })
  })

  test('of the same text goes on standing; another text makes the next number', async () => {
    const first = await freeze('first')
    expect(await freeze('first')).toEqual({ account: first.account, isNew: false })
    expect((await freeze('second')).account.number).toBe(2)
    expect((await accountsOf(id)).map(({ number }) => number)).toEqual([2, 1])
  })

  test('two who press at once draw up one', async () => {
    const both = await Promise.all([freeze('same'), freeze('same')])
    expect(both.map(({ isNew }) => isNew).sort()).toEqual([false, true])
    expect(await accountsOf(id)).toHaveLength(1)
  })

  test('is not drawn up where that is refused, or under the hash of another text', async () => {
    const refused = await freezeAccount({
      id,
      household: 'a',
      at,
      build: () => ({ refused: 'something is open' }),
      stands: () => false,
    })
    expect(refused).toEqual({ refused: 'something is open' })
    const wrong = freezeAccount({
      id,
      household: 'a',
      at,
      build: () => ({ canonicalText: 'first', sha256: sha256Hex('other') }),
      stands: () => false,
    })
    await expect(wrong).rejects.toThrow('SHA-256 of its own text')
    expect(await accountsOf(id)).toEqual([])
  })

  test('is never altered and never deleted, and neither is a signature under it', async () => {
    const { account } = await freeze('first')
    expect(await sign(account)).toBe('signed')
    const attempts = [
      `UPDATE "FinalAccount" SET "canonicalText" = 'forged'`,
      'DELETE FROM "FinalAccount"',
      `UPDATE "AccountSignature" SET "typedName" = 'forged'`,
      'DELETE FROM "AccountSignature"',
    ]
    for (const attempt of attempts)
      await expect(database().write((tables) => tables.$executeRawUnsafe(attempt))).rejects.toThrow(/never/)
    expect((await accountsOf(id))[0]).toEqual(account)
  })
})

describe('a signature under a final account', () => {
  test('is kept with what was ticked and drawn, and goes on record without the drawing', async () => {
    const { account } = await freeze('first')
    expect(await sign(account, { drawing: 'M1 2L3 4' })).toBe('signed')
    expect(await accountSignaturesOf(account.id)).toMatchObject([
      {
        household: 'b',
        partyName: 'Ida Marrow',
        typedName: 'ida marrow',
        drawing: 'M1 2L3 4',
        signedAt: later,
      },
    ])
    const newest = (await historyOf(id)).at(-1)
    expect(newest).toMatchObject({ kind: 'account', detail: { account: 'sign', partyName: 'Ida Marrow' } })
    expect(JSON.stringify(newest)).not.toContain('M1 2L3 4')
  })

  test('is set once', async () => {
    const { account } = await freeze('first')
    await sign(account)
    expect(await sign(account)).toBe('already-signed')
    expect(await accountSignaturesOf(account.id)).toHaveLength(1)
  })

  test('is refused under an older account, under another hash, once the books have changed, and where there is none', async () => {
    const first = await freeze('first')
    const second = await freeze('second')
    expect(await sign(first.account)).toBe('outdated')
    expect(await sign(second.account, { sha256: sha256Hex('first') })).toBe('other-hash')
    expect(await sign(second.account, { isCurrent: () => false })).toBe('books-changed')
    expect(await sign(second.account, { accountId: 'none' })).toBe('no-such-account')
    const other = await createNotebook({ document: '{}', example: false, at })
    expect(await sign(second.account, { notebookId: other.id })).toBe('no-such-account')
    expect(await accountSignaturesOf(second.account.id)).toEqual([])
  })
})
