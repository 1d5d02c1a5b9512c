import { describe, expect, test } from 'vitest'
import { ratio } from '../../../lib/core/amounts/ratio.ts'
import { splitExactly } from '../../../lib/core/amounts/split.ts'

const nothing = { a: 0n, b: 0n }
const parts = ({ a, b }: { a: bigint; b: bigint }) => [a, b]

describe('splitting exactly', () => {
  test('an even number of cents in halves leaves no odd cent', () => {
    expect(splitExactly(10000n, ratio(5000n, 1n), nothing)).toEqual({ a: 5000n, b: 5000n })
  })

  test('10001 cents in halves are 5001 and 5000, the odd one to a on a full tie', () => {
    const split = splitExactly(10001n, ratio(10001n, 2n), nothing)
    expect(split).toEqual({ a: 5001n, b: 5000n, odd: { to: 'a', because: 'first on a full tie' } })
  })

  test('on a tie the odd cent goes to the household that has been asked for less', () => {
    expect(parts(splitExactly(1n, ratio(1n, 2n), { a: 1n, b: 0n }))).toEqual([0n, 1n])
    expect(parts(splitExactly(1n, ratio(1n, 2n), { a: 0n, b: 1n }))).toEqual([1n, 0n])
  })

  test('the larger remainder goes first, even to the household that has been asked for more', () => {
    const split = splitExactly(10n, ratio(20n, 3n), { a: 100n, b: 0n })
    expect(split).toEqual({ a: 7n, b: 3n, odd: { to: 'a', because: 'larger remainder' } })
  })

  test('a third of a hundred is 33, and the other 67', () => {
    expect(parts(splitExactly(100n, ratio(100n, 3n), nothing))).toEqual([33n, 67n])
  })

  test('a whole share that is written as a fraction leaves no odd cent', () => {
    expect(splitExactly(10n, ratio(12n, 4n), nothing)).toEqual({ a: 3n, b: 7n })
  })

  test('nothing splits into nothing and nothing', () => {
    expect(splitExactly(0n, ratio(0n, 7n), nothing)).toEqual({ a: 0n, b: 0n })
  })

  test('a chain of odd cents goes to a, then b, then a', () => {
    let asked = nothing
    const given: (string | undefined)[] = []
    for (let pot = 0; pot < 4; pot += 1) {
      const split = splitExactly(3n, ratio(3n, 2n), asked)
      given.push(split.odd?.to)
      asked = { a: asked.a + split.a, b: asked.b + split.b }
    }
    expect(given).toEqual(['a', 'b', 'a', 'b'])
    expect(asked).toEqual({ a: 6n, b: 6n })
  })

  test('a share below nothing or above the whole is a mistake of the program', () => {
    expect(() => splitExactly(10n, ratio(-1n, 2n), nothing)).toThrow()
    expect(() => splitExactly(10n, ratio(21n, 2n), nothing)).toThrow()
  })
})
