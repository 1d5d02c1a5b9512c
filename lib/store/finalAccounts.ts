import type { Household } from '../core/people/household.ts'
import { database, type Tables } from './database.ts'
import { putOnRecord } from './happenings.ts'
import { type Mark, marksIn } from './marks.ts'
import { documentIn } from './notebooks.ts'
import { type Freezing, type Signature, signatureFrom } from './revisions.ts'
import { sha256Hex } from './sha256.ts'
import { storedHousehold } from './storedHousehold.ts'

/** A final account frozen word for word. The newest of a notebook is the one that stands. */
export type StoredAccount = {
  readonly id: string
  readonly notebookId: string
  /** 1, 2, 3 … within its notebook. */
  readonly number: number
  readonly canonicalText: string
  readonly sha256: string
  readonly frozenAt: Date
  readonly frozenBy: Household
}

export type AccountSignature = Omit<Signature, 'revisionId'> & { readonly accountId: string }

export type AccountSigning =
  | 'signed'
  | 'outdated'
  | 'books-changed'
  | 'other-hash'
  | 'already-signed'
  | 'no-such-account'

/**
 * Freezes the next final account in one transaction: `build` is given the document and the marks as they stand and answers
 * with the text to freeze and its hash, or refuses. Where `stands` finds that the newest account says what that text says,
 * it goes on standing with its signatures, and `isNew` is false: two people who press at once freeze one account.
 *
 * Throws when there is no such notebook, and when the hash is not that of the text.
 */
export async function freezeAccount<Refusal>(freezing: {
  readonly id: string
  readonly household: Household
  readonly at: Date
  readonly build: (document: string, marks: readonly Mark[]) => Freezing<Refusal>
  readonly stands: (newest: string, text: string) => boolean
}): Promise<{ account: StoredAccount; isNew: boolean } | { refused: Refusal }> {
  const { id: notebookId, household, at } = freezing
  return database().write(async (tables) => {
    const built = freezing.build(await documentIn(tables, notebookId), await marksIn(tables, notebookId))
    if ('refused' in built) return { refused: built.refused }
    const { canonicalText, sha256 } = built
    if (sha256Hex(canonicalText) !== sha256)
      throw new Error('A final account is frozen under the SHA-256 of its own text.')
    const newest = await newestIn(tables, notebookId)
    if (newest && freezing.stands(newest.canonicalText, canonicalText))
      return { account: newest, isNew: false }
    const number = (newest?.number ?? 0) + 1
    const row = await tables.finalAccount.create({
      data: { notebookId, number, canonicalText, sha256, frozenAt: at, frozenBy: household },
    })
    const detail = { account: 'drawn up', number, sha256 }
    await putOnRecord(tables, { notebookId, household, at, kind: 'account', detail })
    return { account: accountFrom(row), isNew: true }
  })
}

/** All final accounts of a notebook, newest first. */
export async function accountsOf(notebookId: string): Promise<StoredAccount[]> {
  const rows = await database().read((tables) =>
    tables.finalAccount.findMany({ where: { notebookId }, orderBy: { number: 'desc' } }),
  )
  return rows.map(accountFrom)
}

/** The signatures under a final account: household a's first, then by party. */
export async function accountSignaturesOf(accountId: string): Promise<AccountSignature[]> {
  const rows = await database().read((tables) =>
    tables.accountSignature.findMany({
      where: { accountId },
      orderBy: [{ household: 'asc' }, { partyIndex: 'asc' }],
    }),
  )
  return rows.map(signatureFrom)
}

/**
 * Signs a final account for one party, if it is the one that stands (else `outdated`), if the books still say what it says
 * (else `books-changed`), if `sha256`, the hash that the person signing was shown, is the account's (else `other-hash`),
 * and once. All is looked at inside the transaction.
 */
export async function signFinalAccount(signing: {
  readonly notebookId: string
  readonly accountId: string
  readonly sha256: string
  readonly household: Household
  readonly partyIndex: number
  readonly partyName: string
  readonly capacity: string
  readonly typedName: string
  readonly intent: string
  readonly drawing?: string
  readonly at: Date
  readonly isCurrent: (account: string, document: string, marks: readonly Mark[]) => boolean
}): Promise<AccountSigning> {
  const { notebookId, at, drawing, isCurrent, ...signature } = signing
  const { accountId, household, partyIndex, sha256 } = signing
  return database().write(async (tables) => {
    const account = await tables.finalAccount.findUnique({ where: { id: accountId } })
    if (account === null || account.notebookId !== notebookId) return 'no-such-account'
    if ((await newestIn(tables, notebookId))?.id !== accountId) return 'outdated'
    if (account.sha256 !== sha256) return 'other-hash'
    const earlier = await tables.accountSignature.count({ where: { accountId, household, partyIndex } })
    if (earlier > 0) return 'already-signed'
    const [document, marks] = [await documentIn(tables, notebookId), await marksIn(tables, notebookId)]
    if (!isCurrent(account.canonicalText, document, marks)) return 'books-changed'
    await tables.accountSignature.create({ data: { ...signature, drawing: drawing ?? null, signedAt: at } })
    const { partyName, capacity, typedName } = signing
    const { number } = account
    const detail = { account: 'sign', number, sha256, partyIndex, partyName, capacity, typedName }
    await putOnRecord(tables, { notebookId, household, at, kind: 'account', detail })
    return 'signed'
  })
}

async function newestIn(tables: Tables, notebookId: string): Promise<StoredAccount | undefined> {
  const row = await tables.finalAccount.findFirst({ where: { notebookId }, orderBy: { number: 'desc' } })
  return row === null ? undefined : accountFrom(row)
}

function accountFrom(row: Omit<StoredAccount, 'frozenBy'> & { readonly frozenBy: string }): StoredAccount {
  return { ...row, frozenBy: storedHousehold(row.frozenBy) }
}
