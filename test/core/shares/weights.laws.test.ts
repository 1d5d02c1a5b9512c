import fc from 'fast-check'
import { expect, test } from 'vitest'
import { sectionOf, statementWith } from '../madeNotebook.ts'
import { typedNumber } from '../randomLines.ts'

const price = typedNumber(5000, 2)
const weights = fc.record({ a: fc.nat(1000), b: fc.integer({ min: 1, max: 1000 }) })
const factor = fc.integer({ min: 1, max: 1000 })

function asked(priceText: string, materials: unknown): { a: bigint; b: bigint } {
  const { a, b } = statementWith({ sections: [sectionOf(priceText, materials)] }).asked
  return { a, b }
}

function askedByUse(priceText: string, uses: unknown): { a: bigint; b: bigint } {
  const gate = { ...sectionOf(priceText, { principle: 'use' }, 'g1'), uses }
  const { a, b } = statementWith({ gates: [gate] }).asked
  return { a, b }
}

test('as many times the points for both changes nothing', () => {
  fc.assert(
    fc.property(price, weights, factor, (pot, { a, b }, times) => {
      const points = (factor: number) => ({ principle: 'benefit', a: `${a * factor}`, b: `${b * factor}` })
      expect(asked(pot, points(times))).toEqual(asked(pot, points(1)))
    }),
  )
})

test('as many times the passages for both changes nothing', () => {
  fc.assert(
    fc.property(price, weights, factor, (pot, { a, b }, times) => {
      const uses = (factor: number) => ({ a: `${a * factor}`, b: `${b * factor}` })
      expect(askedByUse(pot, uses(times))).toEqual(askedByUse(pot, uses(1)))
    }),
  )
})

test('as many times the length for both, or another unit for both, changes nothing', () => {
  fc.assert(
    fc.property(price, weights, factor, (pot, { a, b }, times) => {
      const fronts = (factor: number, unit: string) => ({
        principle: 'length',
        a: `${a * factor} ${unit}`,
        b: `${b * factor} ${unit}`,
      })
      const first = asked(pot, fronts(1, 'in'))
      for (const unit of ['in', 'ft', 'mm', 'cm', 'm']) expect(asked(pot, fronts(times, unit))).toEqual(first)
    }),
  )
})

test('points, passages, lengths and percentages of the same size share alike', () => {
  fc.assert(
    fc.property(price, fc.nat(100), (pot, a) => {
      const pair = { a: `${a}`, b: `${100 - a}` }
      const byPercent = asked(pot, { principle: 'percent', ...pair })
      expect(asked(pot, { principle: 'benefit', ...pair })).toEqual(byPercent)
      expect(askedByUse(pot, pair)).toEqual(byPercent)
      expect(asked(pot, { principle: 'length', a: `${a} ft`, b: `${100 - a} ft` })).toEqual(byPercent)
    }),
  )
})

test('halves are agreed parts of fifty each, and a saving where both would have paid the same alone', () => {
  fc.assert(
    fc.property(price, (pot) => {
      const equal = asked(pot, { principle: 'equal' })
      expect(asked(pot, { principle: 'percent', a: '50', b: '50.0000' })).toEqual(equal)
      expect(asked(pot, { principle: 'saving', aloneA: pot, aloneB: pot })).toEqual(equal)
    }),
  )
})

test('more weight never asks a household for less', () => {
  fc.assert(
    fc.property(price, weights, fc.integer({ min: 0, max: 50 }), (pot, { a, b }, more) => {
      const points = (a: number) => ({ principle: 'benefit', a: `${a}`, b: `${b}` })
      expect(asked(pot, points(a + more)).a >= asked(pot, points(a)).a).toBe(true)
    }),
  )
})
