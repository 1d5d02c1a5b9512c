import { Decimal } from 'decimal.js'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { costLineAmount, labourAmount } from '../../../lib/core/amounts/lineAmount.ts'

// Reference library from the registry: decimal.js, with digits enough for the longest legal product (43) to be exact.
const Exact = Decimal.clone({
  precision: 100,
  rounding: Decimal.ROUND_HALF_UP,
  toExpNeg: -200,
  toExpPos: 200,
})

/** A number of the file format with up to `digits` digits after the point; halves are common, since rounding turns on them. */
function typed(largest: bigint, digits: number) {
  return fc
    .tuple(
      fc.bigInt(0n, largest),
      fc.oneof(fc.constant('5'), fc.stringMatching(new RegExp(`^[0-9]{0,${digits}}$`))),
    )
    .map(([whole, fraction]) => (fraction === '' ? whole.toString() : `${whole}.${fraction}`))
}

describe('the amount of a line', () => {
  test('is what decimal.js makes of it, however many digits were typed', () => {
    fc.assert(
      fc.property(
        typed(999_999_999_999n, 6),
        typed(999_999_999_999n, 6),
        typed(99n, 4),
        fc.constantFrom(0, 2, 3, 4),
        (quantity, unitPrice, taxPercent, digits) => {
          const exact = new Exact(quantity).times(unitPrice).times(new Exact(100).plus(taxPercent)).div(100)
          const expected = BigInt(exact.times(new Exact(10).pow(digits)).toDecimalPlaces(0).toFixed(0))
          expect(costLineAmount({ quantity, unitPrice, taxPercent }, digits)).toBe(expected)
        },
      ),
      { numRuns: 2000 },
    )
  })

  test('is the same for labour, hours times rate', () => {
    fc.assert(
      fc.property(typed(99_999n, 6), typed(99_999n, 6), fc.constantFrom(0, 2, 3), (hours, rate, digits) => {
        const exact = new Exact(hours).times(rate).times(new Exact(10).pow(digits))
        expect(labourAmount({ hours, rate }, digits)).toBe(BigInt(exact.toDecimalPlaces(0).toFixed(0)))
      }),
      { numRuns: 2000 },
    )
  })
})
