import { describe, expect, test } from 'vitest'
import { bagsForJob, holeFill, isPossibleHole, type PostHole } from '../../../lib/core/takeoff/concrete.ts'

const hole: PostHole = {
  diameter: 300,
  depth: 900,
  gravel: 100,
  post: { kind: 'round', outside: 60 },
  overbreakPercent: 0,
}

describe('a hole', () => {
  test('is filled above its gravel, around its post', () => {
    const { concreteLitres, gravelLitres } = holeFill(hole)
    expect(concreteLitres).toBeCloseTo((Math.PI / 4) * (0.3 ** 2 - 0.06 ** 2) * 0.8 * 1000, 9)
    expect(gravelLitres).toBeCloseTo((Math.PI / 4) * 0.3 ** 2 * 0.1 * 1000, 9)
  })

  test('that breaks out takes more concrete by its own volume, the post being no thicker for it', () => {
    const more = holeFill({ ...hole, overbreakPercent: 10 }).concreteLitres - holeFill(hole).concreteLitres
    expect(more).toBeCloseTo((Math.PI / 4) * 0.3 ** 2 * 0.8 * 1000 * 0.1, 9)
  })

  test('all of gravel takes no concrete', () => {
    expect(holeFill({ ...hole, gravel: 900 }).concreteLitres).toBe(0)
  })

  test.each([
    ['narrower than its post', { ...hole, diameter: 59 }],
    [
      'narrower than the diagonal of its square post',
      { ...hole, diameter: 84, post: { kind: 'square' as const, outside: 60 } },
    ],
    ['with more gravel than depth', { ...hole, gravel: 901 }],
    ['of a depth below zero', { ...hole, depth: -1, gravel: 0 }],
    ['that is no number', { ...hole, depth: Number.NaN }],
  ])('%s is not possible', (_name, wrong) => {
    expect(isPossibleHole(wrong)).toBe(false)
    expect(() => holeFill(wrong)).toThrow(/broken promise/)
  })

  test('just as wide as the diagonal of its post is possible', () => {
    expect(isPossibleHole({ ...hole, diameter: 85, post: { kind: 'square', outside: 60 } })).toBe(true)
  })
})

describe('bags', () => {
  test('are whole, and none for nothing', () => {
    expect(bagsForJob(0, 17)).toBe(0)
    expect(bagsForJob(0.001, 17)).toBe(1)
    expect(bagsForJob(17.001, 17)).toBe(2)
  })

  test('are not one too many where the volume is a whole number of them', () => {
    for (let bags = 1; bags <= 500; bags += 1) {
      let litres = 0
      for (let bag = 0; bag < bags; bag += 1) litres += 16.990108
      expect(bagsForJob(litres, 16.990108)).toBe(bags)
    }
  })
})
