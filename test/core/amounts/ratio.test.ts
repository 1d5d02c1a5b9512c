import fc from 'fast-check'
import { expect, test } from 'vitest'
import { addRatios, compareRatios, half, multiplyRatios, ratio } from '../../../lib/core/amounts/ratio.ts'

const anyRatio = fc
  .tuple(fc.bigInt({ min: -(10n ** 9n), max: 10n ** 9n }), fc.bigInt({ min: 1n, max: 10n ** 9n }))
  .map(([over, under]) => ratio(over, under))

test('a ratio over nothing throws', () => {
  expect(() => ratio(1n, 0n)).toThrow()
})

test('the sign stands above the line', () => {
  expect(ratio(1n, -2n)).toEqual({ over: -1n, under: 2n })
})

test('ratios compare by value, whatever they are reduced to', () => {
  expect(compareRatios(ratio(2n, 4n), half)).toBe(0)
  expect(compareRatios(ratio(1n, 3n), half)).toBeLessThan(0)
  expect(compareRatios(ratio(-1n, 3n), ratio(-1n, 2n))).toBeGreaterThan(0)
})

test('a third and a sixth are a half, exactly', () => {
  expect(compareRatios(addRatios(ratio(1n, 3n), ratio(1n, 6n)), half)).toBe(0)
})

test('adding and multiplying do not depend on the order', () => {
  fc.assert(
    fc.property(anyRatio, anyRatio, (left, right) => {
      expect(compareRatios(addRatios(left, right), addRatios(right, left))).toBe(0)
      expect(compareRatios(multiplyRatios(left, right), multiplyRatios(right, left))).toBe(0)
    }),
  )
})

test('multiplying spreads over adding', () => {
  fc.assert(
    fc.property(anyRatio, anyRatio, anyRatio, (factor, left, right) => {
      const whole = multiplyRatios(factor, addRatios(left, right))
      const pieces = addRatios(multiplyRatios(factor, left), multiplyRatios(factor, right))
      expect(compareRatios(whole, pieces)).toBe(0)
    }),
  )
})
