import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { asNumber, lowestTerms } from '../../../lib/core/takeoff/exact.ts'

function commonDivisor(left: bigint, right: bigint): bigint {
  return right === 0n ? left : commonDivisor(right, left % right)
}

/** Numbers around the limits where the reckoning changes its way: 31 bits, 53 bits, and beyond. */
const around = fc.oneof(
  fc.bigInt({ min: 1n, max: 100_000n }),
  fc.bigInt({ min: 2n ** 31n - 4n, max: 2n ** 31n + 4n }),
  fc.bigInt({ min: 2n ** 53n - 4n, max: 2n ** 53n + 4n }),
  fc.bigInt({ min: 1n, max: 2n ** 90n }),
)

describe('lowest terms', () => {
  test('leave the value, and no common divisor', () => {
    fc.assert(
      fc.property(around, around, around, fc.boolean(), (over, under, common, below) => {
        const value = { over: (below ? -over : over) * common, under: under * common }
        const lowest = lowestTerms(value)
        expect(lowest.over * value.under).toBe(value.over * lowest.under)
        expect(lowest.under).toBeGreaterThan(0n)
        expect(commonDivisor(lowest.over < 0n ? -lowest.over : lowest.over, lowest.under)).toBe(1n)
      }),
      { numRuns: 500 },
    )
  })

  test('nothing is nothing over one', () => {
    expect(lowestTerms({ over: 0n, under: 12n })).toEqual({ over: 0n, under: 1n })
  })
})

test('as a float a quotient is the nearest one, or next to it', () => {
  fc.assert(
    fc.property(around, around, (over, under) => {
      const float = asNumber({ over, under })
      // Off by less than one part in 2⁵¹, besides what the scale itself cuts off.
      const scale = 2n ** 60n
      const exact = Number((over * scale) / under) / 2 ** 60
      expect(Math.abs(float - exact)).toBeLessThanOrEqual(float * 2 ** -51 + 2 ** -59)
    }),
    { numRuns: 500 },
  )
})
