import type { LabourLine } from '../agreement/notebook.ts'
import { type Hundredths, sumHours } from '../amounts/hours.ts'
import { multiplyRatios, type Ratio, ratio } from '../amounts/ratio.ts'
import { splitExactly } from '../amounts/split.ts'
import type { ForBoth } from '../people/household.ts'

/** An item's hours in hundredths: counted ones (hired too), what is asked of each household, and gifts apart. */
export type HoursShare = {
  readonly hours: Hundredths
  readonly a: Hundredths
  readonly b: Hundredths
  readonly gifts: ForBoth<Hundredths>
}

/**
 * Rule 4 of the file format: hours asked of a = counted hours × its exact fraction of the item's labour pot, in
 * hundredths by the largest remainder; a tie goes to the household asked for fewer hours so far, then to a.
 */
export function shareHours(
  labour: readonly LabourLine[],
  fractionA: Ratio,
  askedSoFar: ForBoth<Hundredths>,
): HoursShare {
  const hours = sumHours(labour.filter((line) => line.counts).map((line) => line.hours))
  const { a, b } = splitExactly(hours, multiplyRatios(ratio(hours, 1n), fractionA), askedSoFar)
  const gifts = (by: 'a' | 'b') =>
    sumHours(labour.filter((line) => !line.counts && line.by === by).map((line) => line.hours))
  return { hours, a, b, gifts: { a: gifts('a'), b: gifts('b') } }
}
