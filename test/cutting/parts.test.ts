import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { lengthOf } from '../../lib/core/amounts/length.ts'
import { lengthsBound, lowerBoundOnBought } from '../../lib/cutting/bounds.ts'
import { pieceNanometres, stockNanometres } from '../../lib/cutting/cutRequest.ts'
import { cuttingProblem } from '../../lib/cutting/cuttingProblem.ts'
import { mostValuableFill } from '../../lib/cutting/fill.ts'
import { firstFitPacking, quickPacking } from '../../lib/cutting/heuristics.ts'
import { standingOf } from '../../lib/cutting/packing.ts'
import { remainingOf } from '../../lib/cutting/remaining.ts'
import { shorten } from '../../lib/cutting/shorten.ts'

describe('lengths for cutting', () => {
  test('are exact to the sixty-fourth of an inch', () => {
    expect(pieceNanometres(lengthOf('1/64 in'))).toBe(396_875)
    expect(stockNanometres(lengthOf('1/64 in'))).toBe(396_875)
    expect(pieceNanometres(lengthOf('21 ft'))).toBe(6_400_800_000)
  })

  test('that are not exact make a piece a hair longer and stock a hair shorter', () => {
    expect(pieceNanometres(lengthOf('1/3 in'))).toBe(8_466_667)
    expect(stockNanometres(lengthOf('1/3 in'))).toBe(8_466_666)
  })
})

describe('a request of wrong figures throws', () => {
  const right = {
    pieces: [{ label: 'p', length: 10, count: 1 }],
    stock: [{ label: 's', length: 20, bought: true }],
    kerf: 0,
  }
  test.each([
    ['a kerf below zero', { ...right, kerf: -1 }],
    ['a length of zero', { ...right, pieces: [{ label: 'p', length: 0, count: 1 }] }],
    ['half a piece', { ...right, pieces: [{ label: 'p', length: 10, count: 0.5 }] }],
    ['a length that is no number', { ...right, stock: [{ label: 's', length: Number.NaN, bought: true }] }],
    ['stock of less than none', { ...right, stock: [{ label: 's', length: 20, bought: true, count: -1 }] }],
  ])('%s', (_name, request) => {
    expect(() => cuttingProblem(request)).toThrow(/broken promise/)
  })
})

describe('the fill worth most', () => {
  const candidate = fc.record({
    size: fc.integer({ min: 1, max: 12 }),
    value: fc.integer({ min: 0, max: 20 }),
    limit: fc.integer({ min: 0, max: 3 }),
  })

  /** All ways, with nothing left out. */
  function best(capacity: number, rest: readonly { size: number; value: number; limit: number }[]): number {
    const [first, ...others] = rest
    if (first === undefined) return 0
    let most = 0
    for (let count = 0; count <= first.limit && count * first.size <= capacity; count += 1) {
      most = Math.max(most, count * first.value + best(capacity - count * first.size, others))
    }
    return most
  }

  test('is that of trying everything', () => {
    fc.assert(
      fc.property(
        fc.array(candidate, { maxLength: 6 }),
        fc.integer({ min: 0, max: 30 }),
        (given, capacity) => {
          const candidates = given.map((each, item) => ({ ...each, item }))
          const fill = mostValuableFill(capacity, candidates, { steps: 1_000_000 })
          expect(fill.complete).toBe(true)
          expect(fill.value).toBe(best(capacity, given))
          const worth = fill.takes.reduce(
            (sum, { item, count }) => sum + count * (given[item]?.value ?? 0),
            0,
          )
          const size = fill.takes.reduce((sum, { item, count }) => sum + count * (given[item]?.size ?? 0), 0)
          expect(worth).toBe(fill.value)
          expect(size).toBeLessThanOrEqual(capacity)
        },
      ),
    )
  })

  test('says when its steps ran out', () => {
    // Even sizes never fill an odd capacity, so there is always something left to try.
    const candidates = Array.from({ length: 30 }, (_, item) => ({
      item,
      size: 102 + 2 * item,
      value: 102 + 2 * item,
      limit: 1,
    }))
    expect(mostValuableFill(1001, candidates, { steps: 50 }).complete).toBe(false)
  })
})

describe('bounds', () => {
  const problem = (lengths: readonly number[], capacity: number, there: readonly number[] = []) =>
    cuttingProblem({
      pieces: lengths.map((length) => ({ label: '', length, count: 1 })),
      stock: [
        { label: '', length: capacity, bought: true },
        ...there.map((length) => ({ label: '', length, count: 1, bought: false })),
      ],
      kerf: 0,
    })

  test('pieces above half a length take one each, however little they are in all', () => {
    expect(lengthsBound(problem([51, 51, 51], 100).items, 100)).toBe(3)
    expect(lengthsBound(problem([60, 60, 35, 35], 100).items, 100)).toBe(2)
    // 45 fits beside none of the 60s, so the threshold 45 asks for a third length; sizes alone ask for two.
    expect(lengthsBound(problem([60, 60, 45], 100).items, 100)).toBe(3)
  })

  test('what is there lowers what must be bought', () => {
    const given = problem([50, 50, 50], 100, [70])
    expect(lowerBoundOnBought(given, quickPacking(given))).toBe(100)
    const enough = problem([50], 100, [70])
    expect(lowerBoundOnBought(enough, quickPacking(enough))).toBe(0)
  })

  test('never pass a plan that exists', () => {
    const lengths = fc.array(fc.integer({ min: 3, max: 60 }), { minLength: 1, maxLength: 25 })
    fc.assert(
      fc.property(lengths, fc.array(fc.integer({ min: 10, max: 60 }), { maxLength: 3 }), (pieces, there) => {
        const given = problem(pieces, 60, there)
        const packing = firstFitPacking(given)
        expect(lowerBoundOnBought(given, packing)).toBeLessThanOrEqual(
          standingOf(given, packing).boughtLength,
        )
      }),
    )
  })
})

test('a plan is cut from the shortest lengths that hold it, from what is there before what is bought', () => {
  const problem = cuttingProblem({
    pieces: [{ label: '', length: 40, count: 2 }],
    stock: [
      { label: '', length: 100, bought: true },
      { label: '', length: 50, bought: true },
      { label: '', length: 45, count: 1, bought: false },
    ],
    kerf: 0,
  })
  const long = problem.bins.findIndex(({ length }) => length === 100)
  const shortened = shorten(problem, [{ bin: long, takes: [{ item: 0, count: 1 }], times: 2 }])
  expect(shortened.map(({ bin, times }) => [problem.bins[bin]?.length, times])).toEqual([
    [45, 1],
    [50, 1],
  ])
})

test('the longest piece left that fits is the one that going through all would find', () => {
  const moves = fc.array(fc.tuple(fc.nat(20), fc.integer({ min: 0, max: 45 }), fc.nat(22)), { maxLength: 60 })
  fc.assert(
    fc.property(
      fc.uniqueArray(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 20 }),
      moves,
      (sizes, steps) => {
        const items = [...sizes]
          .sort((left, right) => right - left)
          .map((size) => ({ length: size, size, demand: 2, sources: [] }))
        const left = items.map(({ demand }) => demand)
        const remaining = remainingOf(items)
        for (const [taken, size, from] of steps) {
          if ((left[taken] ?? 0) > 0) {
            left[taken] = (left[taken] ?? 0) - 1
            remaining.take([{ item: taken, count: 1 }], 1)
          }
          const expected = items.findIndex(
            (item, at) => at >= from && item.size <= size && (left[at] ?? 0) > 0,
          )
          expect(remaining.longest(size, from)).toBe(expected < 0 ? undefined : expected)
        }
      },
    ),
  )
})
