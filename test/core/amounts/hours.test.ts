import { describe, expect, test } from 'vitest'
import { hoursText, sumHours } from '../../../lib/core/amounts/hours.ts'

describe('the sum of hours', () => {
  test('of nothing is nothing', () => {
    expect(sumHours([])).toBe(0n)
  })

  test('is rounded once, after adding', () => {
    expect(sumHours(['0.004', '0.004'])).toBe(1n)
    expect(sumHours(['0.333333', '0.333333', '0.333334'])).toBe(100n)
  })

  test('rounds half of a hundredth up', () => {
    expect(sumHours(['0.005'])).toBe(1n)
    expect(sumHours(['0.004999'])).toBe(0n)
  })
})

test.each([
  [0n, '0.00'],
  [5n, '0.05'],
  [1250n, '12.50'],
  [100_000n, '1000.00'],
])('%s hundredths are written %s', (hundredths, text) => {
  expect(hoursText(hundredths)).toBe(text)
})
