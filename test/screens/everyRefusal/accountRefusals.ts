import { accountSignedByAll, drawnUp } from '../../actions/givenAccount.ts'
import { settledDocument } from '../../core/ledger/settledBooks.ts'
import { pressed } from './pressing.ts'
import type { RefusalGroup, Table } from './refusalRow.ts'
import { putUpNow, signedNow } from './signedByStore.ts'
import { otherHash, signaturesOn } from './signing.ts'
import { meanwhile, notebookOf, withList } from './storeBeside.ts'

const { sign, signedAs, typedName, sentOtherwise } = signaturesOn('/final-account', 'Marnie Oakshott')

/** A payment that is said to be made, and waits. */
const oneMore = withList('contributions', (entries) => [
  ...entries,
  {
    household: 'b',
    kind: 'transfer',
    amount: '20.00',
    date: '2026-05-28',
    enteredBy: 'b',
    means: 'in cash',
    waits: true,
  },
])

const drawUp = async (table: Table) => drawnUp(notebookOf(table))

/** The final account of settled books: drawn up and signed. */
export const accountRefusals: RefusalGroup = {
  about: 'a final account',
  notebook: settledDocument(),
  ready: async (table) => {
    await putUpNow(table)
    await signedNow(table, 'a', 'b')
  },
  rows: [
    {
      what: 'it is drawn up after a payment was entered meanwhile that waits',
      refuses: 'accountRefusals.stillOpen',
      at: '/final-account',
      ...meanwhile(oneMore),
      press: pressed('Draw up the final account'),
      says: 'The final account can’t be drawn up yet: something is still open. Load the page again to see what.',
    },
    {
      what: 'nothing was typed and ticked',
      refuses: ['signatureRefusals.name', 'signatureRefusals.intent'],
      at: '/final-account',
      given: drawUp,
      press: sign,
      says: 'Type the full name as it stands in the account: Marnie Oakshott.',
    },
    sentOtherwise(
      'a place to sign that can’t be read',
      'pressRefusals.form',
      'This form could not be read. Load the page again.',
      '"partyIndex":0',
      '"partyIndex":-1',
    ),
    sentOtherwise(
      'a party that the household has not',
      'accountRefusals.no-such-party',
      'There is no such party of your household in this account. Load the page again.',
      '"partyIndex":0',
      '"partyIndex":7',
    ),
    sentOtherwise(
      'another text than the one that was shown',
      'accountRefusals.other-hash',
      'What you were shown is not the text of this account: the check numbers differ, so nothing was signed.',
      ...otherHash,
    ),
    {
      what: 'it is signed after the books have changed meanwhile',
      refuses: 'accountRefusals.books-changed',
      at: '/final-account',
      ...meanwhile(oneMore),
      typed: signedAs,
      press: sign,
      says: 'The books have changed since this account was drawn up, so nothing was signed. Load the page again',
      keeps: [[typedName, 'Marnie Oakshott']],
    },
    {
      what: 'a party signs that has signed in another window',
      refuses: 'accountRefusals.already-signed',
      at: '/final-account',
      meanwhile: async (table) => accountSignedByAll(notebookOf(table)),
      typed: signedAs,
      press: sign,
      says: 'This party has signed this account already.',
      keeps: [[typedName, 'Marnie Oakshott']],
    },
    {
      what: 'it is signed after another was drawn up meanwhile',
      refuses: 'accountRefusals.outdated',
      at: '/final-account',
      given: drawUp,
      meanwhile: drawUp,
      typed: signedAs,
      press: sign,
      says: 'A newer final account has been drawn up in the meantime, so nothing was signed. Load the page again and read the new one.',
      keeps: [[typedName, 'Marnie Oakshott']],
    },
  ],
}
