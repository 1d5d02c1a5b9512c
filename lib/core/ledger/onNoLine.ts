import type { Notebook } from '../agreement/notebook.ts'
import type { Minor } from '../amounts/money.ts'
import { countedLines } from './actual.ts'
import { contributionAmount } from './contributed.ts'
import type { ItemStanding } from './plannedAgainstActual.ts'

/** A receipt, goods in kind, money back or hours for an item, with what of it is on no line of the plan. */
export type EntryOnNoLine = {
  /** Its place in the book. */
  readonly entry: number
  readonly item: string
  /** Minor units; of money back below zero. */
  readonly amount: Minor
}

/** Every entry for one item that names no line, hours no task, for a part of its amount or for all of it; not what was taken back. */
export function entriesOnNoLine(notebook: Notebook, digits: number): readonly EntryOnNoLine[] {
  return notebook.contributions.flatMap((entry, index) => {
    if (entry.struck !== undefined || entry.for === '') return []
    if (entry.kind === 'transfer' || (entry.kind === 'hours' && entry.task !== '')) return []
    const onLines = countedLines(entry, digits).reduce((sum, { amount }) => sum + amount, 0n)
    const amount = contributionAmount(entry, digits) - onLines
    const signed = entry.kind === 'refund' ? -amount : amount
    return amount > 0n ? [{ entry: index, item: entry.for, amount: signed }] : []
  })
}

type Spent = Pick<ItemStanding, 'planned' | 'onLines' | 'onNoLine' | 'things' | 'counts'>

/**
 * By how much more was spent on items than was planned, on lines and on none together, what is kept or was sold taken off:
 * where that is more than what counts for them so far says already. Minor units, above zero.
 */
export function spentBeyondPlan(items: readonly Spent[]): Minor | undefined {
  const sum = (amountOf: (item: Spent) => Minor) => items.reduce((total, item) => total + amountOf(item), 0n)
  const spent = sum(({ onLines, onNoLine, things }) => onLines + onNoLine - things)
  const planned = sum((item) => item.planned)
  return spent > planned && spent > sum(({ counts }) => counts) ? spent - planned : undefined
}
