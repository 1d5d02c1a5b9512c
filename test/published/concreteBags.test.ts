import { describe, expect, test } from 'vitest'
import {
  bagsForJob,
  concreteBags,
  dryWeight,
  holeFill,
  type PostHole,
} from '../../lib/core/takeoff/concrete.ts'
import {
  kilogramsPerPound,
  litresPerCubicFoot,
  litresPerCubicYard,
  millimetresPerInch,
} from '../../lib/core/takeoff/unitFactors.ts'
import { fence, quantityOf, takeOffOf } from '../core/takeoff/madeFence.ts'

const inches = (figure: number) => figure * millimetresPerInch
const hole = (diameter: number, depth: number, post: PostHole['post'], gravel = 0): PostHole => ({
  diameter: inches(diameter),
  depth: inches(depth),
  gravel: inches(gravel),
  post: { ...post, outside: inches(post.outside) },
  overbreakPercent: 0,
})
const cubicFeet = (litres: number) => litres / litresPerCubicFoot
const bag = (label: string) => {
  const found = concreteBags.find((each) => each.label === label)
  if (!found) throw new Error(`no bag of ${label}`)
  return found
}

// Volumes: π·D²·h/4, recomputed.
describe('holes in ft³', () => {
  test('12 × 36 in is 2.35619 ft³, 0.0872665 yd³, 66.720 L', () => {
    const { concreteLitres } = holeFill(hole(12, 36, { kind: 'round', outside: 0 }))
    expect(cubicFeet(concreteLitres)).toBeCloseTo(2.35619, 5)
    expect(concreteLitres / litresPerCubicYard).toBeCloseTo(0.0872665, 7)
    expect(concreteLitres).toBeCloseTo(66.72, 3)
  })

  test.each([
    ['12 × 36 in less a 2⅜ in post', hole(12, 36, { kind: 'round', outside: 2.375 }), 2.2639],
    ['10 × 30 in less a 3½ in square post', hole(10, 30, { kind: 'square', outside: 3.5 }), 1.150865],
    ['9½ × 30 in less a 2⅜ in post', hole(9.5, 30, { kind: 'round', outside: 2.375 }), 1.153681],
  ])('%s', (_name, given, expected) => {
    expect(cubicFeet(holeFill(given).concreteLitres)).toBeCloseTo(expected, 5)
  })

  test('6 in of gravel in a 12 in hole are 0.392699 ft³', () => {
    const { gravelLitres } = holeFill(hole(12, 36, { kind: 'round', outside: 2.375 }, 6))
    expect(cubicFeet(gravelLitres)).toBeCloseTo(0.392699, 6)
  })
})

// Yields as labels of packaged concrete (ASTM C387) state them, found the same on several trade pages.
describe('bags', () => {
  test.each([
    ['80 lb', 0.6, 45],
    ['60 lb', 0.45, 60],
    ['50 lb', 0.375, 72],
    ['40 lb', 0.3, 90],
  ])('of %s make %f ft³ each, %i to the cubic yard', (label, yieldCubicFeet, perYard) => {
    const { yieldLitres, dryKilograms } = bag(label)
    expect(cubicFeet(yieldLitres)).toBeCloseTo(yieldCubicFeet, 9)
    expect(bagsForJob(litresPerCubicYard, yieldLitres)).toBe(perYard)
    // “about 133 lb/ft³ dry” on the same pages.
    expect(dryKilograms / kilogramsPerPound / yieldCubicFeet).toBeCloseTo(400 / 3, 6)
  })

  test.each([
    [2.2639, '80 lb', 4],
    [2.2639, '60 lb', 6],
    [2.2639, '50 lb', 7],
    [1.153681, '80 lb', 2],
    [1.153681, '60 lb', 3],
    [1.153681, '50 lb', 4],
  ])('%f ft³ of bags of %s: %i (recomputed)', (volume, label, expected) => {
    expect(bagsForJob(volume * litresPerCubicFoot, bag(label).yieldLitres)).toBe(expected)
  })

  test('ten holes are rounded up once: 38 bags of 80 lb, not 40 (recomputed)', () => {
    const bags = bagsForJob(10 * 2.2639 * litresPerCubicFoot, bag('80 lb').yieldLitres)
    expect(bags).toBe(38)
    expect(dryWeight(bags, bag('80 lb')) / kilogramsPerPound).toBeCloseTo(38 * 80, 9)
  })
})

test('concrete that is not bought in bags weighs 150 lb/ft³ (from memory; 2402.8 kg/m³ recomputed)', () => {
  const buildUp = {
    posts: { shape: 'round', outside: '2 3/8 in', spacing: '8 ft', hole: '12 in', depth: '36 in' },
    footing: { fill: 'concrete' },
  }
  const { kilograms } = quantityOf(takeOffOf([fence('0 ft', '72 ft', { buildUp })]), 'concrete')
  // Ten holes of 2.2639 ft³.
  expect((kilograms ?? 0) / kilogramsPerPound / 150).toBeCloseTo(22.639, 2)
})

test('a post of 3½ by 1½ in leaves more room than a square one of 3½ in: 10 × 30 in less 0.091146 ft³ (recomputed)', () => {
  const flat = hole(10, 30, { kind: 'rectangular', outside: 3.5, thickness: inches(1.5) })
  expect(cubicFeet(holeFill(flat).concreteLitres)).toBeCloseTo(1.363538 - 0.091146, 5)
})
