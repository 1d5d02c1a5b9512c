import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { withPoint } from '../../../lib/core/amounts/typedFigure.ts'
import { exactFraction, roundedFraction } from '../../../lib/core/amounts/typedFraction.ts'
import { isNumber, scaledInteger } from '../../../lib/core/amounts/typedNumber.ts'

describe('a fraction typed for a figure', () => {
  test.each([
    ['12 1/2', '12.5'],
    ['9 1/2', '9.5'],
    ['12-1/2', '12.5'],
    ['7 ½', '7.5'],
    ['7½', '7.5'],
    ['7\u00a0½', '7.5'],
    ['7\u202f3/4', '7.75'],
    ['7\u20091⁄4', '7.25'],
    ['½', '0.5'],
    ['¾', '0.75'],
    ['⅛', '0.125'],
    ['3/2', '1.5'],
    ['1/64', '0.015625'],
    ['4/4', '1'],
  ])('%s is %s', (typed, figure) => {
    expect(withPoint(typed)).toBe(figure)
  })

  test.each(['1/3', '7 ⅓', '1/0', '1/65', '1/2/3', '1 1 1/2', '-1/2', '1/2 ft', '/', '½ ½', '12/'])(
    '“%s” is left as it is',
    (typed) => {
      expect(withPoint(typed)).toBe(typed)
    },
  )

  test('is exactly what was typed, or left alone', () => {
    fc.assert(
      fc.property(
        fc.nat(999_999),
        fc.integer({ min: 0, max: 64 }),
        fc.integer({ min: 1, max: 64 }),
        (whole, over, under) => {
          const figure = exactFraction(`${whole} ${over}/${under}`, 6)
          const millionths = BigInt(whole * under + over) * 1_000_000n
          if (figure === undefined) expect(millionths % BigInt(under)).not.toBe(0n)
          else expect(scaledInteger(figure, 6) * BigInt(under)).toBe(millionths)
        },
      ),
    )
  })

  test('without an end is rounded to the nearest, half up', () => {
    expect(roundedFraction('7 1/3', 6)).toBe('7.333333')
    expect(roundedFraction('2/3', 2)).toBe('0.67')
    expect(roundedFraction('1/8', 2)).toBe('0.13')
    expect(roundedFraction('1/8', 6)).toBeUndefined()
    expect(roundedFraction('0.333', 2)).toBeUndefined()
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 63 }),
        fc.integer({ min: 1, max: 64 }),
        fc.nat(6),
        (over, under, digits) => {
          const figure = roundedFraction(`${over}/${under}`, digits)
          if (figure === undefined) return
          expect(isNumber(figure, digits)).toBe(true)
          const apart = scaledInteger(figure, digits) * BigInt(under) - BigInt(over) * 10n ** BigInt(digits)
          expect(2n * (apart < 0n ? -apart : apart)).toBeLessThanOrEqual(BigInt(under))
        },
      ),
    )
  })
})
