import type { Contribution } from '../agreement/notebook.ts'
import { labourAmount } from '../amounts/lineAmount.ts'
import { type Minor, minorUnits } from '../amounts/money.ts'
import { type ForBoth, otherHousehold } from '../people/household.ts'

/** What one entry in the book is worth in minor units, before its direction; a struck entry is worth nothing. */
export function contributionAmount(entry: Contribution, digits: number): Minor {
  if (entry.struck !== undefined) return 0n
  return entry.kind === 'hours' ? labourAmount(entry, digits) : minorUnits(entry.amount, digits)
}

/**
 * What each household has given so far: cash, material and hours, transfers made less transfers received, less what it
 * received back from a supplier or buyer. May be negative.
 */
export function contributed(entries: readonly Contribution[], digits: number): ForBoth<Minor> {
  const given = { a: 0n, b: 0n }
  for (const entry of entries) {
    const amount = contributionAmount(entry, digits)
    given[entry.household] += entry.kind === 'refund' ? -amount : amount
    if (entry.kind === 'transfer') given[otherHousehold(entry.household)] -= amount
  }
  return given
}
