import type { AccountSigningPlace } from '../../app/notebook/server/account/accountActions.ts'
import { accountOf } from '../../app/notebook/server/account/accountOf.ts'
import { linesToMark } from '../../app/notebook/server/books/linesToMark.ts'
import { booksPlan, signedBefore } from '../../app/notebook/server/booksPlan.ts'
import { agreementText, canonicalText } from '../../lib/core/agreement/canonicalText.ts'
import { signingParties } from '../../lib/core/agreement/revision.ts'
import { assert } from '../../lib/core/assert.ts'
import { accountParties, finalAccountOf, readFinalAccount } from '../../lib/core/ledger/finalAccount.ts'
import { plannedAgainstActual } from '../../lib/core/ledger/plannedAgainstActual.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { digitsOf, statementOf } from '../../lib/core/shares/statement.ts'
import { documentText } from '../../lib/forms/parts.ts'
import { readDocument } from '../../lib/forms/readNotebook.ts'
import { accountsOf, freezeAccount, signFinalAccount } from '../../lib/store/finalAccounts.ts'
import { fingerprintOf } from '../../lib/store/fingerprint.ts'
import { editNotebook } from '../../lib/store/notebooks.ts'
import { freezeRevision, signRevision } from '../../lib/store/revisions.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'
import { settledDocument } from '../core/ledger/settledBooks.ts'
import { formOf } from './givenForms.ts'
import { documentOf, markEverything } from './world.ts'

const settledAt = new Date('2027-06-01T18:00:00Z')
const at = settledAt

/** Puts a small fence into a notebook, whose books are settled, and has all parties sign the agreement about it. */
export async function settledBooks(
  id: string,
  changed: Record<string, unknown> = {},
  signedAt = settledAt,
): Promise<void> {
  const document = settledDocument(changed)
  await editNotebook({
    id,
    household: 'a',
    at,
    change: () => ({ document: documentText(document), changed: [], kept: undefined }),
  })
  await markEverything(id)
  await signedByAll(id, signedAt)
}

/** Freezes the document of a notebook as its next revision, signed by all. */
export async function signedByAll(id: string, at = settledAt): Promise<void> {
  const document = await documentOf(id)
  const read = readDocument(document)
  assert(read.ok, 'the document holds')
  const canonicalText = agreementText(document)
  const frozen = await freezeRevision({
    id,
    household: 'a',
    at,
    build: () => ({ canonicalText, sha256: sha256Hex(canonicalText) }),
  })
  assert('revision' in frozen, 'nothing stands in the way')
  const { id: revisionId, sha256 } = frozen.revision
  for (const { household, partyIndex, name, capacity } of signingParties(read.value.notebook))
    await signRevision({
      notebookId: id,
      revisionId,
      sha256,
      household,
      partyIndex,
      partyName: name,
      capacity,
      typedName: name,
      intent: 'I sign this agreement.',
      at,
    })
}

/** Draws up the final account of books that are settled. */
export async function drawnUp(id: string): Promise<void> {
  const { signed } = await signedBefore(id)
  const frozen = await freezeAccount({
    id,
    household: 'a',
    at,
    build: (document, marks) => {
      const { text } = accountOf(JSON.parse(document), signed, marks)
      return text === undefined ? { refused: 'open' } : { canonicalText: text, sha256: sha256Hex(text) }
    },
    stands: () => false,
  })
  assert('account' in frozen, 'nothing is open')
}

/** Puts a final account on record, whatever the books of the notebook say. */
export async function accountOnRecord(id: string): Promise<void> {
  const read = readDocument(settledDocument())
  assert(read.ok, 'the document holds')
  const { notebook } = read.value
  const statement = statementOf(notebook)
  assert(statement.ok, 'its shares can be worked out')
  const revision = { number: 1, sha256: sha256Hex('an agreement') }
  const text = canonicalText(finalAccountOf(notebook, statement.value, revision))
  await freezeAccount({
    id,
    household: 'a',
    at,
    build: () => ({ canonicalText: text, sha256: sha256Hex(text) }),
    stands: () => false,
  })
}

/** Which account a party of this index signs: the one that stands. */
export async function accountPlace(id: string, partyIndex = 0): Promise<AccountSigningPlace> {
  const [newest] = await accountsOf(id)
  if (newest === undefined) throw new Error('No final account has been drawn up.')
  return { accountId: newest.id, sha256: newest.sha256, partyIndex }
}

/** Has all parties sign the final account that stands. */
export async function accountSignedByAll(id: string): Promise<void> {
  const [newest] = await accountsOf(id)
  assert(newest !== undefined, 'an account was drawn up')
  for (const { household, partyIndex, name, capacity } of accountParties(
    readFinalAccount(newest.canonicalText),
  ))
    await signFinalAccount({
      notebookId: id,
      accountId: newest.id,
      sha256: newest.sha256,
      household,
      partyIndex,
      partyName: name,
      capacity,
      typedName: name,
      intent: 'I sign this final account.',
      at,
      isCurrent: () => true,
    })
}

/** A payment of 20.00 that a household says it has made, and that waits for the other's word. */
export async function saidToBePaid(id: string, by: Household): Promise<void> {
  const entry = {
    household: by,
    kind: 'transfer',
    amount: '20.00',
    date: '2027-05-28',
    note: `a part from ${by}`,
    enteredBy: by,
    means: 'in cash',
    waits: true,
  }
  await editNotebook({
    id,
    household: by,
    at,
    change: (stored) => {
      const document = JSON.parse(stored)
      const contributions = [...(document.contributions ?? []), entry]
      return { document: documentText({ ...document, contributions }), changed: [], kept: undefined }
    },
  })
}

/** The form that confirms the newest payment of the other household. */
export async function confirmForm(id: string, receiver: Household): Promise<FormData> {
  const { contributions } = await documentOf(id)
  const entries = contributions as { kind?: string; household?: string }[]
  const index = entries.findLastIndex(({ kind, household }) => kind === 'transfer' && household !== receiver)
  return formOf({ index: String(index), fingerprint: fingerprintOf(entries[index]) })
}

/** The form that marks the lines of an item for which something was entered, as they stand. */
export async function itemBoughtForm(id: string, household: Household, item = 'c1'): Promise<FormData> {
  const { notebook } = booksPlan(await documentOf(id), (await signedBefore(id)).signed)
  const digits = digitsOf(notebook)
  const standing = plannedAgainstActual(notebook, digits).items.find((one) => one.id === item)
  assert(standing !== undefined, 'there is such an item')
  return formOf({ item, fingerprint: fingerprintOf(linesToMark(standing, household, digits)) })
}
