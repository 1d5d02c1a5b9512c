import type { Contribution } from '../agreement/notebook.ts'
import { labourAmount } from '../amounts/lineAmount.ts'
import type { Minor } from '../amounts/money.ts'
import { countedHours } from '../hours/ownHours.ts'
import { type ForBoth, otherHousehold } from '../people/household.ts'
import type { CountedThing } from './things.ts'
import { valuedAmount } from './valuation.ts'

/** What one entry in the book is worth in minor units, before its direction; a struck entry is worth nothing. */
export function contributionAmount(entry: Contribution, digits: number): Minor {
  if (entry.struck !== undefined) return 0n
  return entry.kind === 'hours'
    ? labourAmount({ hours: countedHours(entry), rate: entry.rate }, digits)
    : valuedAmount(entry, digits)
}

/**
 * What each household has given so far: cash, material and hours, transfers made less transfers received, less what it
 * received back from a supplier or buyer, and less the value of the things that it keeps or took the money for. May be
 * negative.
 */
export function contributed(
  entries: readonly Contribution[],
  digits: number,
  things: readonly CountedThing[] = [],
): ForBoth<Minor> {
  const given = { a: 0n, b: 0n }
  for (const entry of entries) {
    const amount = contributionAmount(entry, digits)
    given[entry.household] += entry.kind === 'refund' ? -amount : amount
    if (entry.kind === 'transfer') given[otherHousehold(entry.household)] -= amount
  }
  for (const { household, value } of things) given[household] -= value
  return given
}
