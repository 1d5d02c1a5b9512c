import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ratio } from '../../lib/core/amounts/ratio.ts'
import { splitExactly } from '../../lib/core/amounts/split.ts'
import { Fraction } from './fraction.ts'
import { largestRemainder } from './largestRemainder.ts'

/** The census of 1790 as a textbook on apportionment prints it (found in a public text), with Hamilton's 120 seats. */
const census: readonly (readonly [string, number, bigint])[] = [
  ['Connecticut', 236841, 8n],
  ['Delaware', 55540, 2n],
  ['Georgia', 70835, 2n],
  ['Kentucky', 68705, 2n],
  ['Maryland', 278514, 9n],
  ['Massachusetts', 475327, 16n],
  ['New Hampshire', 141822, 5n],
  ['New Jersey', 179570, 6n],
  ['New York', 331589, 11n],
  ['North Carolina', 353523, 12n],
  ['Pennsylvania', 432879, 14n],
  ['Rhode Island', 68446, 2n],
  ['South Carolina', 206236, 7n],
  ['Vermont', 85533, 3n],
  ['Virginia', 630560, 21n],
]
const people = census.map(([, population]) => new Fraction(population))
const seatOf = (seats: readonly bigint[], state: string) =>
  seats[census.findIndex(([name]) => name === state)]

describe('the largest remainder method (Hamilton; see Balinski & Young, Fair Representation)', () => {
  test('found in a public text, recomputed: the census of 1790 at 120 seats', () => {
    expect(census.reduce((total, [, population]) => total + population, 0)).toBe(3_615_920)
    expect(largestRemainder(120n, people)).toEqual(census.map(([, , seats]) => seats))
  })

  test('found in a public text, recomputed: at 105 seats Delaware gets 2 and Virginia 18', () => {
    const seats = largestRemainder(105n, people)
    expect([seatOf(seats, 'Delaware'), seatOf(seats, 'Virginia')]).toEqual([2n, 18n])
  })

  test('found in a public text, recomputed: cutting down by a divisor of 33000 (Jefferson) gives 1 and 19, so the method matters', () => {
    const seats = people.map((population) => population.dividedBy(new Fraction(33000)).floor)
    expect(seats.reduce((total, count) => total + count, 0n)).toBe(105n)
    expect([seatOf(seats, 'Delaware'), seatOf(seats, 'Virginia')]).toEqual([1n, 19n])
  })

  test('from memory of the Alabama paradox, recomputed: one seat more takes one from the smallest of 6, 6 and 2', () => {
    const weights = [6, 6, 2].map((weight) => new Fraction(weight))
    expect(largestRemainder(10n, weights)).toEqual([4n, 4n, 2n])
    expect(largestRemainder(11n, weights)).toEqual([5n, 5n, 1n])
  })

  test.each([
    [10000n, 3, [3334n, 3333n, 3333n]],
    [10001n, 2, [5001n, 5000n]],
    [100n, 6, [17n, 17n, 17n, 17n, 16n, 16n]],
  ])('recomputed: %s cents among %i alike, ties in the order of the list', (cents, parties, parts) => {
    const weights = Array.from({ length: parties }, () => new Fraction(1))
    expect(largestRemainder(cents, weights)).toEqual(parts)
  })
})

describe('the program’s split of two is that method', () => {
  const amounts = fc.bigInt({ min: 0n, max: 10n ** 12n })
  const weights = fc.tuple(fc.nat(10 ** 6), fc.integer({ min: 1, max: 10 ** 6 }))

  test('for any amount and any two weights', () => {
    fc.assert(
      fc.property(amounts, weights, (whole, [a, b]) => {
        const split = splitExactly(whole, ratio(whole * BigInt(a), BigInt(a + b)), { a: 0n, b: 0n })
        expect([split.a, split.b]).toEqual(largestRemainder(whole, [new Fraction(a), new Fraction(b)]))
      }),
      { numRuns: 500 },
    )
  })

  test('10001 cents in halves are 5001 and 5000', () => {
    const split = splitExactly(10001n, ratio(10001n, 2n), { a: 0n, b: 0n })
    expect([split.a, split.b]).toEqual([5001n, 5000n])
  })

  test('a derivation: with two parties one unit more never takes one away', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 0n, max: 10n ** 6n }), weights, (whole, [a, b]) => {
        const part = (units: bigint) =>
          splitExactly(units, ratio(units * BigInt(a), BigInt(a + b)), { a: 0n, b: 0n })
        const [before, after] = [part(whole), part(whole + 1n)]
        expect(after.a >= before.a && after.b >= before.b).toBe(true)
      }),
    )
  })
})
