import type { Contribution, Notebook } from '../../core/agreement/notebook.ts'
import type { Minor } from '../../core/amounts/money.ts'
import { contributed, statedAmount, waitsForReceiver } from '../../core/ledger/contributed.ts'
import { countedThings } from '../../core/ledger/things.ts'
import { type ForBoth, households } from '../../core/people/household.ts'
import { placesOf } from '../../core/shares/itemShares.ts'
import { digitsOf } from '../../core/shares/statement.ts'
import { dayWords } from '../day.ts'
import { booksSpending } from '../figures/booksSpending.ts'
import { contributionWords, householdName } from '../labels.ts'
import { moneyWords, typedMoneyWords } from '../money.ts'
import { meansWords, transferStanding } from '../transferText.ts'
import { actualBlocks } from './actualBlocks.ts'
import type { Block, TableRow } from './block.ts'
import { figureBlocks } from './figureBlocks.ts'
import { householdStart, itemTitle, typedSentence } from './names.ts'
import { paymentPlanBlocks } from './paymentPlanBlocks.ts'
import type { SummaryInput } from './summaryInput.ts'
import { unbroken } from './unbroken.ts'

/** What has been given so far, the balance, and the one payment that evens the two. */
export function booksBlocks(input: SummaryInput): Block[] {
  const { notebook, standing, booksAsOf, actual = input.statement } = input
  const day = booksAsOf === undefined ? '' : ` as of ${unbroken(dayWords(booksAsOf))}`
  const apart =
    standing.kind === 'draft' ? '' : ' Receipts are kept apart from what is signed, and change nothing in it.'
  const entries = notebook.contributions
  const digits = digitsOf(notebook)
  return [
    { kind: 'heading', level: 1, id: 'books', text: `What has been given so far${day}` },
    {
      kind: 'paragraph',
      text:
        entries.length === 0
          ? `Nothing has been given yet.${apart}`
          : `Only what has been given counts here.${apart}`,
    },
    ...figureBlocks(booksSpending(notebook, actual, booksAsOf)),
    ...(entries.length === 0 ? [] : [entryTable(notebook)]),
    ...actualBlocks(notebook),
    ...paymentPlanBlocks(notebook, booksAsOf, actual),
    ...(actual.ok
      ? balanceBlocks(notebook, actual.value)
      : givenBlocks(notebook, contributed(entries, digits, countedThings(notebook, digits)))),
  ]
}

function entryTable(notebook: Notebook): Block {
  return {
    kind: 'table',
    caption: 'Each entry in the books',
    columns: [{ title: 'Day' }, { title: 'From' }, { title: 'What' }, { title: 'Amount', figure: true }],
    rows: notebook.contributions.map((entry) => entryRow(notebook, entry)),
  }
}

function entryRow(notebook: Notebook, entry: Contribution): TableRow {
  const { struck } = entry
  const amount = statedAmount(entry, digitsOf(notebook))
  const words = moneyWords(entry.kind === 'refund' ? -amount : amount, notebook.currency)
  const names = { a: householdName(notebook, 'a'), b: householdName(notebook, 'b') }
  const taken =
    struck &&
    `Struck on ${dayWords(struck.on)} by ${householdName(notebook, struck.by)}${struck.why.trim() ? `: ${struck.why.trim()}` : ''}`
  return {
    cells: [
      unbroken(dayWords(entry.date)),
      householdName(notebook, entry.household),
      [
        taken,
        kindOfEntry(entry, notebook.currency),
        forWhat(notebook, entry.for),
        entry.shop.trim() && `Shop: ${entry.shop.trim()}`,
        entry.means.trim() && meansWords(entry.means),
        transferStanding(entry, names)?.text,
        entry.note.trim() && `Note: ${entry.note.trim()}`,
      ]
        .map((part) => typedSentence(part ?? ''))
        .filter(Boolean)
        .join(' '),
      struck ? `struck, was ${words}` : waitsForReceiver(entry) ? `not confirmed: ${words}` : words,
    ],
    ...(struck && { struck: true }),
  }
}

function kindOfEntry(entry: Contribution, currency: string): string {
  if (entry.kind !== 'hours') return contributionWords[entry.kind]
  const rate = entry.rate === '' ? 'no rate yet' : `at ${typedMoneyWords(entry.rate, currency)} an hour`
  const own = entry.own === '' ? '' : `, ${unbroken(`${entry.own} h`)} of them beyond what was agreed`
  return `${contributionWords.hours}: ${unbroken(`${entry.hours} h`)} ${rate}${own}${entry.task.trim() === '' ? '' : `. Task: ${entry.task.trim()}`}`
}

function forWhat(notebook: Notebook, id: string): string {
  const place = id === '' ? undefined : placesOf(notebook).find(({ item }) => item.id === id)
  return place === undefined ? '' : `For ${itemTitle(place.kind, place.index, place.item.name)}`
}

type Balanced = {
  readonly asked: ForBoth<Minor>
  readonly contributed: ForBoth<Minor>
  readonly balance: ForBoth<Minor>
  readonly outstanding: Minor
  readonly transfer: { readonly from: 'a' | 'b'; readonly to: 'a' | 'b'; readonly amount: Minor } | undefined
}

function balanceBlocks(notebook: Notebook, statement: Balanced): Block[] {
  const money = (minor: Minor) => moneyWords(minor, notebook.currency)
  const row = (name: string, amounts: ForBoth<Minor>) => [name, money(amounts.a), money(amounts.b)]
  const { transfer, outstanding } = statement
  const open =
    outstanding < 0n
      ? `More has been given than is asked for in all: the outstanding sum is ${money(outstanding)}.`
      : outstanding === 0n
        ? 'All that is asked for has been given.'
        : `${money(outstanding)} of the whole has not been given by anyone yet.`
  const evening = transfer
    ? `One payment evens the two: ${householdName(notebook, transfer.from)} pays ${money(transfer.amount)} to ${householdName(notebook, transfer.to)}.`
    : 'No payment between the two is due now.'
  return [
    {
      kind: 'table',
      caption: 'The balance',
      columns: balanceColumns(notebook),
      rows: [
        { cells: row('Asked for', statement.asked) },
        { cells: row('Given so far', statement.contributed) },
      ],
      foot: row('Balance: still to give', statement.balance),
    },
    {
      kind: 'paragraph',
      text: `A minus in the balance means that the household has given more than it is asked for. ${open} ${evening}`,
    },
  ]
}

function givenBlocks(notebook: Notebook, given: ForBoth<Minor>): Block[] {
  const cells = [
    'Given so far',
    moneyWords(given.a, notebook.currency),
    moneyWords(given.b, notebook.currency),
  ]
  return [
    { kind: 'table', caption: 'Given so far', columns: balanceColumns(notebook), rows: [{ cells }] },
    { kind: 'paragraph', text: 'The balance can’t be told until the shares can be worked out.' },
  ]
}

function balanceColumns(notebook: Notebook) {
  return [
    { title: '' },
    ...households.map((household) => ({ title: householdStart(notebook, household), figure: true })),
  ]
}
