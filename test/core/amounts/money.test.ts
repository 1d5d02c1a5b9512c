import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { minorUnits, moneyText } from '../../../lib/core/amounts/money.ts'

describe('money as text', () => {
  test.each([
    [0n, 2, '0.00'],
    [5n, 2, '0.05'],
    [50n, 2, '0.50'],
    [-5n, 2, '-0.05'],
    [-2050n, 2, '-20.50'],
    [1200n, 0, '1200'],
    [0n, 0, '0'],
    [-3n, 0, '-3'],
    [1n, 3, '0.001'],
    [12345n, 4, '1.2345'],
    [99_999_999_999_999n, 2, '999999999999.99'],
  ])('%s minor units with %i digits are %s', (minor, digits, text) => {
    expect(moneyText(minor, digits)).toBe(text)
  })
})

describe('typed money in minor units', () => {
  test.each([
    ['120', 2, 12000n],
    ['120.5', 2, 12050n],
    ['120.50', 2, 12050n],
    ['1200', 0, 1200n],
    ['0.001', 3, 1n],
  ])('%s with %i digits', (typed, digits, minor) => {
    expect(minorUnits(typed, digits)).toBe(minor)
  })

  test('more digits than the currency has throw', () => {
    expect(() => minorUnits('12.345', 2)).toThrow()
  })
})

test('every amount written as text reads back as the same amount', () => {
  fc.assert(
    fc.property(fc.bigInt({ min: 0n, max: 10n ** 14n }), fc.integer({ min: 0, max: 4 }), (minor, digits) => {
      expect(minorUnits(moneyText(minor, digits), digits)).toBe(minor)
    }),
  )
})
