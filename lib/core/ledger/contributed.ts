import type { Contribution } from '../agreement/notebook.ts'
import { labourAmount } from '../amounts/lineAmount.ts'
import type { Minor } from '../amounts/money.ts'
import { countedHours } from '../hours/ownHours.ts'
import { type ForBoth, otherHousehold } from '../people/household.ts'
import type { CountedThing } from './things.ts'
import { valuedAmount } from './valuation.ts'

/** What one entry in the book says it is worth in minor units, before its direction, whether or not it counts. */
export function statedAmount(entry: Contribution, digits: number): Minor {
  return entry.kind === 'hours'
    ? labourAmount({ hours: countedHours(entry), rate: entry.rate }, digits)
    : valuedAmount(entry, digits)
}

/** A payment between the households of which only its payer has spoken, and which was not taken back. */
export function waitsForReceiver({ kind, waits, struck }: Contribution): boolean {
  return kind === 'transfer' && waits && struck === undefined
}

/**
 * What one entry in the book is worth in minor units, before its direction. One that was taken back is worth nothing, and
 * so is a payment between the households until the one who received it has said so.
 */
export function contributionAmount(entry: Contribution, digits: number): Minor {
  const waits = entry.kind === 'transfer' && entry.waits
  return entry.struck !== undefined || waits ? 0n : statedAmount(entry, digits)
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
