import { type Capacity, capacities } from '../../core/agreement/notebook.ts'
import type { PartyPlace } from '../../core/agreement/revision.ts'
import { never } from '../../core/assert.ts'
import type { FinalAccount } from '../../core/ledger/finalAccount.ts'
import type { OpenForAccount, ThingOpen } from '../../core/ledger/openForAccount.ts'
import { movedLineWords } from '../booksText.ts'
import { faultText } from '../faultText.ts'
import { itemTitle } from '../itemWords.ts'
import { capacityWords } from '../labels.ts'
import { moneyWords } from '../money.ts'
import type { ShareNames } from '../shareText.ts'
import { beyondToleranceWords } from '../toleranceText.ts'
import { waitingTransferWords } from '../transferText.ts'

/** What the last settlement is called, and what is said about it. */
export const accountWords = {
  title: 'The final account',
  lead: 'What each item was planned at and came to, what each of you gave, and that neither owes the other anything. It is frozen once nothing is open, and all parties of both households sign it.',
  /** Where proposals of either household wait for an answer. */
  proposalsWait:
    'They don’t stop the final account, and are no part of it: it goes by the revision that all have signed and by the books. Answer them first if they should count in it.',
  openHeading: 'What is still open',
  nothingOpen: 'Nothing is open. The final account can be drawn up.',
  drawUp: 'Draw up the final account',
  asOfNow: 'The account as it would be drawn up now',
  changedSince:
    'The books have changed since this account was drawn up, so it no longer says what they say. Draw up a new one; the old one stays on record.',
  closed: 'The account is closed: nothing is owed.',
  beforeSigning:
    'Read the whole account below. All parties of your household sign through your one link; sign only for yourself. A typed name is a simple electronic signature. A signed account can be evidence; this program gives no legal advice.',
  /** Where what is open is settled. */
  settle: {
    'nothing signed': 'Sign',
    shares: 'See the shares',
    lines: 'Mark them in the books',
    'line moved': 'Look at it in the books',
    'payment waits': 'Confirm it, or ask for it',
    thing: 'See the list of things',
    'value half marked': 'See its values',
    'conversion waits': 'See hours and money',
    'beyond tolerance': 'Open the item',
    outstanding: 'See money and hours',
    owed: 'Enter the payment',
  } satisfies Readonly<Record<OpenForAccount['kind'], string>>,
} as const

/** A household's name in an account, as it was when the account was frozen. */
export function accountNames({ households }: Pick<FinalAccount, 'households'>): {
  readonly a: string
  readonly b: string
} {
  return {
    a: households.a.name.trim() || 'the first household',
    b: households.b.name.trim() || 'the second household',
  }
}

/** The sentence that a party ticks when it signs an account; it is kept with the signature, word for word. */
export function accountIntent(place: PartyPlace, householdName: string): string {
  const capacity = capacities.find((one): one is Capacity => one === place.capacity)
  return `I, ${place.name}, sign this final account as ${capacity === undefined ? place.capacity : capacityWords[capacity]} for ${householdName}. I have read it, I agree that nothing is owed between the households for this fence, and I mean my typed name to be my signature.`
}

/** What is open, in one sentence each. */
export function openForAccountWords(
  open: OpenForAccount,
  names: ShareNames,
  titleOf: (id: string) => string,
): string {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  switch (open.kind) {
    case 'nothing signed':
      return 'There is no revision yet that all have signed, so there is nothing to settle.'
    case 'shares':
      return `The shares can’t be worked out: ${faultText(open.fault)}`
    case 'lines': {
      const { item, lines } = open
      const title = itemTitle({ kind: item.kind, name: item.name, key: `item:${item.id}` })
      return `${title}, still to be marked by both as bought, worked or not needed: ${listed(lines)}.`
    }
    case 'line moved':
      return `${movedLineWords(open.moved, names.currency)}.`
    case 'payment waits':
      return waitingTransferWords(open.transfer, names, names.currency)
    case 'thing':
      return `${open.what.trim() || 'A thing without a name'}: ${thingWords[open.why]}`
    case 'value half marked':
      return `${open.note.trim() || 'Goods in kind'}: one household marked that the whole amount counts, the other has not.`
    case 'conversion waits':
      return `${titleOf(open.item)}: hours and money were to be exchanged, and one household has not marked it.`
    case 'beyond tolerance':
      return `${beyondToleranceWords(open.item, names.currency)}.`
    case 'outstanding':
      return open.amount > 0n
        ? `${money(open.amount)} of the whole has not been given by anyone yet.`
        : `${money(-open.amount)} more was given than counts. Say which lines it was for and mark what they came to, or take it back.`
    case 'owed':
      return `${names[open.evening.from]} still owes ${names[open.evening.to]} ${money(open.evening.amount)}.`
    default:
      return never(open)
  }
}

const thingWords = {
  'not brought back': 'it has not been brought back. Enter the day on which it was.',
  'nobody keeps it': 'nobody is said to keep it, or to have its money.',
  'not marked by both': 'its value has not been marked by both.',
  'changed since both marked it':
    'it was changed since both marked it. What both marked counts until both mark the change.',
  'taken off by one':
    'one household took it off the list. What both marked counts until the other marks that too.',
} satisfies Readonly<Record<ThingOpen, string>>

/** Some lines by name; of many, the first three and how many more. */
function listed(lines: readonly string[]): string {
  const named = lines.slice(0, 3).map((line) => `“${line.trim() || 'a line with no name'}”`)
  const more = lines.length - named.length
  if (more > 0) return `${named.join(', ')} and ${more} more`
  const last = named.pop() ?? ''
  return named.length === 0 ? last : `${named.join(', ')} and ${last}`
}

/** Why an account is not drawn up, or not signed. */
export const accountRefusals = {
  /** Nothing is drawn up while something of the books waits. */
  stillOpen:
    'The final account can’t be drawn up yet: something is still open. Load the page again to see what.',
  outdated:
    'A newer final account has been drawn up in the meantime, so nothing was signed. Load the page again and read the new one.',
  'books-changed':
    'The books have changed since this account was drawn up, so nothing was signed. Load the page again: a new account has to be drawn up.',
  'other-hash':
    'What you were shown is not the text of this account: the check numbers differ, so nothing was signed. Load the page again.',
  'already-signed': 'This party has signed this account already. Load the page again to see who has.',
  'no-such-party': 'There is no such party of your household in this account. Load the page again.',
  'no-such-account': 'There is no such final account of this notebook.',
} as const

/** For the strip of open matters. */
export function accountAwaits(number: number, name: string): string {
  return `Final account ${number} waits for the signature of ${name}`
}
