import fc from 'fast-check'
import { expect, test } from 'vitest'
import { ratio } from '../../../lib/core/amounts/ratio.ts'
import { splitExactly } from '../../../lib/core/amounts/split.ts'

const units = fc.bigInt({ min: 0n, max: 10n ** 16n })
/** A total, a's exact share of it, and what was asked before. */
const splits = fc
  .record({
    total: fc.oneof(units, fc.bigInt({ min: 0n, max: 20n })),
    under: fc.oneof(fc.constant(2n), fc.bigInt({ min: 1n, max: 10n ** 12n })),
    over: fc.bigInt({ min: 0n, max: 10n ** 12n }),
    a: fc.bigInt({ min: 0n, max: 3n }),
    b: fc.bigInt({ min: 0n, max: 3n }),
  })
  .map(({ total, under, over, a, b }) => ({
    total,
    exactA: ratio(over % (total * under + 1n), under),
    asked: { a, b },
  }))

test('the parts add to the whole', () => {
  fc.assert(
    fc.property(splits, ({ total, exactA, asked }) => {
      const split = splitExactly(total, exactA, asked)
      expect(split.a + split.b).toBe(total)
      expect(split.a >= 0n && split.b >= 0n).toBe(true)
    }),
  )
})

test('no part is half a unit or more off its exact share, but for a tie, which is half a unit off', () => {
  fc.assert(
    fc.property(splits, ({ total, exactA, asked }) => {
      const split = splitExactly(total, exactA, asked)
      const off = split.a * exactA.under - exactA.over
      const twice = 2n * (off < 0n ? -off : off)
      const tie = split.odd !== undefined && split.odd.because !== 'larger remainder'
      if (tie) expect(twice).toBe(exactA.under)
      else expect(twice < exactA.under).toBe(true)
    }),
  )
})

test('seen from the other household it is the same split, but for the odd unit of a full tie, which a has twice', () => {
  fc.assert(
    fc.property(splits, ({ total, exactA, asked }) => {
      const split = splitExactly(total, exactA, asked)
      const other = splitExactly(total, ratio(total * exactA.under - exactA.over, exactA.under), {
        a: asked.b,
        b: asked.a,
      })
      if (split.odd?.because === 'first on a full tie')
        expect([other.a, other.b]).toEqual([split.b + 1n, split.a - 1n])
      else expect([other.a, other.b]).toEqual([split.b, split.a])
    }),
  )
})

test('how the exact share is reduced makes no difference', () => {
  fc.assert(
    fc.property(splits, fc.bigInt({ min: 1n, max: 10n ** 6n }), ({ total, exactA, asked }, factor) => {
      const expanded = ratio(exactA.over * factor, exactA.under * factor)
      expect(splitExactly(total, expanded, asked)).toEqual(splitExactly(total, exactA, asked))
    }),
  )
})
