import type { Contribution, Notebook } from '../agreement/notebook.ts'
import { currencyDigits } from '../amounts/currency.ts'
import type { Minor } from '../amounts/money.ts'
import { assert, never } from '../assert.ts'
import { type ForBoth, households, otherHousehold } from '../people/household.ts'
import { contributionAmount } from './contributed.ts'
import { countedThings } from './things.ts'

/**
 * The accounts of the books. A household is debited with what it is asked for and with what it holds or gets back, and
 * credited with what it gives, so its balance is what it has still to give. `fence` is what the fence has cost, `plan`
 * what it was to cost, `suppliers` everybody who sells or buys.
 */
export const accounts = ['a', 'b', 'suppliers', 'fence', 'plan'] as const
export type Account = (typeof accounts)[number]

/** One side of an entry, in minor units, above zero. */
export type Posting = { readonly account: Account; readonly side: 'debit' | 'credit'; readonly amount: Minor }

export type JournalEntry = {
  readonly kind: 'asked' | 'thing' | 'taken back' | Contribution['kind']
  /** Place in the list that it comes from: of the book, or of the things; undefined for what was asked. */
  readonly index: number | undefined
  readonly on: string
  readonly postings: readonly Posting[]
}

/**
 * The books as a journal in double entry: everything that was given, taken back, kept or sold, and, where the shares can
 * be worked out, what each household is asked for. Every entry balances, or the program is wrong.
 *
 * @param asked of each household after caps, with the actual figures; undefined where it can't be worked out
 */
export function journalOf(notebook: Notebook, asked: ForBoth<Minor> | undefined): readonly JournalEntry[] {
  const digits = currencyDigits(notebook.currency)
  assert(digits !== undefined, 'a notebook that was read has a currency in use')
  return [
    ...(asked === undefined ? [] : [askedEntry(asked)]),
    ...notebook.contributions.flatMap((entry, index) => entriesOf(entry, index, digits)),
    ...countedThings(notebook, digits).map(({ index, household, value }) =>
      balanced({
        kind: 'thing',
        index,
        on: notebook.books.things[index]?.on ?? '',
        postings: [debit(household, value), credit('fence', value)],
      }),
    ),
  ].filter(({ postings }) => postings.length > 0)
}

function askedEntry(asked: ForBoth<Minor>): JournalEntry {
  return balanced({
    kind: 'asked',
    index: undefined,
    on: '',
    postings: [debit('a', asked.a), debit('b', asked.b), credit('plan', asked.a + asked.b)],
  })
}

/** An entry that was taken back stays as it was posted, and is posted once more the other way round. */
function entriesOf(entry: Contribution, index: number, digits: number): readonly JournalEntry[] {
  const { struck, ...given } = entry
  const amount = contributionAmount(given, digits)
  const posted = balanced({ kind: entry.kind, index, on: entry.date, postings: postingsOf(entry, amount) })
  if (struck === undefined) return [posted]
  const back = posted.postings.map((posting) => ({ ...posting, side: otherSide(posting.side) }))
  return [posted, balanced({ kind: 'taken back', index, on: struck.on, postings: back })]
}

function postingsOf({ kind, household }: Contribution, amount: Minor): readonly Posting[] {
  switch (kind) {
    case 'cash':
      // The supplier delivers to the fence, and is paid by the household.
      return [
        debit('fence', amount),
        credit('suppliers', amount),
        debit('suppliers', amount),
        credit(household, amount),
      ]
    case 'refund':
      return [
        debit('suppliers', amount),
        credit('fence', amount),
        debit(household, amount),
        credit('suppliers', amount),
      ]
    case 'material':
    case 'hours':
      return [debit('fence', amount), credit(household, amount)]
    case 'transfer':
      return [debit(otherHousehold(household), amount), credit(household, amount)]
    default:
      return never(kind)
  }
}

function debit(account: Account, amount: Minor): Posting {
  return { account, side: 'debit', amount }
}

function credit(account: Account, amount: Minor): Posting {
  return { account, side: 'credit', amount }
}

function otherSide(side: Posting['side']): Posting['side'] {
  return side === 'debit' ? 'credit' : 'debit'
}

/** The entry without its postings of nothing. Throws where its two sides differ. */
function balanced(entry: JournalEntry): JournalEntry {
  const postings = entry.postings.filter(({ amount }) => amount !== 0n)
  assert(sumOf(postings, 'debit') === sumOf(postings, 'credit'), 'both sides of an entry are equal')
  return { ...entry, postings }
}

function sumOf(postings: readonly Posting[], side: Posting['side']): Minor {
  return postings.reduce((sum, posting) => (posting.side === side ? sum + posting.amount : sum), 0n)
}

export type TrialBalance = {
  readonly rows: readonly {
    readonly account: Account
    readonly debit: Minor
    readonly credit: Minor
    /** Debit less credit. */
    readonly balance: Minor
  }[]
  readonly debit: Minor
  readonly credit: Minor
}

/** Both sides of every account, and their sums, which are equal whatever was entered. */
export function trialBalance(journal: readonly JournalEntry[]): TrialBalance {
  const postings = journal.flatMap((entry) => entry.postings)
  const rows = accounts.map((account) => {
    const own = postings.filter((posting) => posting.account === account)
    const [debits, credits] = [sumOf(own, 'debit'), sumOf(own, 'credit')]
    return { account, debit: debits, credit: credits, balance: debits - credits }
  })
  return { rows, debit: sumOf(postings, 'debit'), credit: sumOf(postings, 'credit') }
}

/** What each household has given, by the journal: its credits less its debits, without what it is asked for. */
export function givenByJournal(journal: readonly JournalEntry[]): ForBoth<Minor> {
  const given = { a: 0n, b: 0n }
  for (const { postings } of journal.filter(({ kind }) => kind !== 'asked'))
    for (const household of households)
      for (const { account, side, amount } of postings)
        if (account === household) given[household] += side === 'credit' ? amount : -amount
  return given
}
