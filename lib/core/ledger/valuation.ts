import type { BookMarks, Contribution, Valuation } from '../agreement/notebook.ts'
import { costLineAmount } from '../amounts/lineAmount.ts'
import { lesser, type Minor, minorUnits } from '../amounts/money.ts'

/** What goods in kind are worth by each of the two ways, in minor units; undefined where a way was not said. */
export type TwoValues = {
  readonly documented: Minor | undefined
  /** Weight × the yard's price for one unit, rounded once. */
  readonly byWeight: Minor | undefined
  /** The lower of those that were said. */
  readonly lower: Minor | undefined
}

export function twoValues(valuation: Valuation, digits: number): TwoValues {
  const documented = valuation.documented === '' ? undefined : minorUnits(valuation.documented, digits)
  const byWeight =
    valuation.weight === '' || valuation.yardPrice === ''
      ? undefined
      : costLineAmount(
          { quantity: valuation.weight, unitPrice: valuation.yardPrice, taxPercent: '0' },
          digits,
        )
  return { documented, byWeight, lower: lowerOf(documented, byWeight) }
}

/**
 * Goods in kind as far as they count: up to the lower of their two values, unless both households marked that the whole
 * amount counts. The amount itself where nothing was said of its value.
 */
export function valuedAmount(entry: Contribution, digits: number): Minor {
  const amount = minorUnits(entry.amount, digits)
  if (entry.kind !== 'material' || entry.valuation === undefined) return amount
  if (markedByBoth(entry.valuation.marks)) return amount
  const { lower } = twoValues(entry.valuation, digits)
  return lower === undefined ? amount : lesser(amount, lower)
}

export function markedByBoth(marks: BookMarks): boolean {
  return marks.a !== undefined && marks.b !== undefined
}

function lowerOf(left: Minor | undefined, right: Minor | undefined): Minor | undefined {
  if (left === undefined || right === undefined) return left ?? right
  return lesser(left, right)
}
