import { describe, expect, test } from 'vitest'
import { eveningPayment } from '../../../lib/core/ledger/evening.ts'

describe('the one payment that evens the two', () => {
  test('is limited by what one has given too much', () => {
    expect(eveningPayment({ a: 500n, b: -200n })).toEqual({ from: 'a', to: 'b', amount: 200n })
  })

  test('is limited by what the other still has to give', () => {
    expect(eveningPayment({ a: -500n, b: 200n })).toEqual({ from: 'b', to: 'a', amount: 200n })
  })

  test.each([
    ['both still have to give', 1n, 1n],
    ['both have given too much', -1n, -1n],
    ['one is exactly even', 0n, 5n],
    ['the other is exactly even', -5n, 0n],
    ['both are even', 0n, 0n],
  ])('is none where %s', (_, a, b) => {
    expect(eveningPayment({ a, b })).toBeUndefined()
  })
})
