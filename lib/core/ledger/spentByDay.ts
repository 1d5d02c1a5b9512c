import type { Notebook } from '../agreement/notebook.ts'
import { type Minor, minorUnits } from '../amounts/money.ts'
import type { ForBoth, Household } from '../people/household.ts'
import { contributionAmount } from './contributed.ts'
import type { FinalAccount } from './finalAccount.ts'

/** Money, goods or hours that a household gave for the fence on a day; below zero where it got something back. */
export type Spending = { readonly on: string; readonly household: Household; readonly amount: Minor }

/** What each household had spent by the end of a day. */
export type SpentBy = { readonly on: string; readonly spent: ForBoth<Minor> }

/** The spending of a book. Payments between the households are no cost, and what was taken back counts as nothing. */
export function spendingOf(notebook: Notebook, digits: number): readonly Spending[] {
  return notebook.contributions
    .filter(({ kind, struck }) => kind !== 'transfer' && struck === undefined)
    .map((entry) => ({
      on: entry.date,
      household: entry.household,
      amount: contributionAmount(entry, digits) * (entry.kind === 'refund' ? -1n : 1n),
    }))
}

/** The spending that a final account was made of. */
export function spendingOfAccount({ entries }: FinalAccount, digits: number): readonly Spending[] {
  return entries
    .filter(({ kind }) => kind !== 'transfer')
    .map(({ date, household, amount, kind }) => ({
      on: date,
      household,
      amount: minorUnits(amount, digits) * (kind === 'refund' ? -1n : 1n),
    }))
}

/** The days on which anything was spent or came back, in order, each with the sums up to its end. */
export function spentByDay(spending: readonly Spending[]): readonly SpentBy[] {
  const byDay = new Map<string, ForBoth<Minor>>()
  let spent = { a: 0n, b: 0n }
  for (const { on, household, amount } of spending.toSorted(byDate)) {
    spent = { ...spent, [household]: spent[household] + amount }
    byDay.set(on, spent)
  }
  return [...byDay].map(([on, sums]) => ({ on, spent: sums }))
}

function byDate(one: Spending, other: Spending): number {
  return one.on < other.on ? -1 : one.on > other.on ? 1 : 0
}
