import type { Notebook } from '../agreement/notebook.ts'
import type { Minor } from '../amounts/money.ts'
import type { ForBoth, Household } from '../people/household.ts'
import { countedLines } from './actual.ts'
import { contributionAmount } from './contributed.ts'
import { lineFinder } from './findLine.ts'
import { countedThings } from './things.ts'

/**
 * What each household has spent on each item, by its id: money, goods and hours, less what came back and less the things
 * that it keeps or sold. '' is the whole fence. An item comes to what `plannedAgainstActual` has for it; payments between
 * the households are no cost.
 */
export function spentByItem(notebook: Notebook, digits: number): ReadonlyMap<string, ForBoth<Minor>> {
  const spent = new Map<string, ForBoth<Minor>>()
  const find = lineFinder(notebook)
  const add = (item: string, household: Household, amount: Minor) => {
    const before = spent.get(item) ?? { a: 0n, b: 0n }
    spent.set(item, { ...before, [household]: before[household] + amount })
  }
  for (const entry of notebook.contributions) {
    if (entry.kind === 'transfer' || entry.struck !== undefined) continue
    const sign = entry.kind === 'refund' ? -1n : 1n
    let rest = contributionAmount(entry, digits)
    for (const line of countedLines(entry, digits)) {
      rest -= line.amount
      // A line that is gone is no item's: it is asked about by itself.
      const planned = find(line.spent)
      if (planned !== undefined) add(planned.itemId, entry.household, sign * line.amount)
    }
    add(entry.for, entry.household, sign * rest)
  }
  for (const { item, household, value } of countedThings(notebook, digits)) add(item, household, -value)
  return spent
}
