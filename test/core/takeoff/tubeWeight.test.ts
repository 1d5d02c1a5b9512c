import { describe, expect, test } from 'vitest'
import {
  aluminiumDensity,
  type CrossSection,
  isPossibleSection,
  massPerMetre,
  sectionArea,
  steelDensity,
} from '../../../lib/core/takeoff/tubeWeight.ts'

describe('the mass of a metre', () => {
  test('of solid bars and boards is area times density', () => {
    expect(massPerMetre({ kind: 'square bar', outside: 20 }, steelDensity)).toBeCloseTo(3.14, 9)
    expect(massPerMetre({ kind: 'round bar', outside: 20 }, steelDensity)).toBeCloseTo(2.46615, 5)
    // Timber of 500 kg/m³, the user's own figure.
    expect(massPerMetre({ kind: 'board', width: 100, thickness: 20 }, 500)).toBeCloseTo(1, 12)
  })

  test('of aluminium is 2700 parts in 7850 of steel', () => {
    const section: CrossSection = { kind: 'square tube', outside: 40, wall: 2, corners: 'sharp' }
    expect(massPerMetre(section, aluminiumDensity)).toBeCloseTo(304e-6 * 2700, 12)
  })

  test('of a tube whose wall is half its size is that of a bar', () => {
    expect(sectionArea({ kind: 'round tube', outside: 20, wall: 10 })).toBeCloseTo(
      sectionArea({ kind: 'round bar', outside: 20 }),
      9,
    )
    expect(sectionArea({ kind: 'square tube', outside: 20, wall: 10, corners: 'sharp' })).toBe(400)
  })

  test('of a tube with rolled corners is what four quarter rings and four sides add up to', () => {
    const [outside, wall] = [60, 3]
    const ring = (Math.PI * ((2 * wall) ** 2 - wall ** 2)) / 1
    const sides = 4 * (outside - 4 * wall) * wall
    expect(sectionArea({ kind: 'square tube', outside, wall, corners: 'rolled' })).toBeCloseTo(
      ring + sides,
      9,
    )
  })
})

describe('no metal has a section', () => {
  test.each<[string, CrossSection]>([
    ['whose wall is more than half of it', { kind: 'round tube', outside: 20, wall: 10.5 }],
    ['whose rolled corners overlap', { kind: 'square tube', outside: 20, wall: 5.5, corners: 'rolled' }],
    ['without a wall', { kind: 'round tube', outside: 20, wall: 0 }],
    ['below zero', { kind: 'square bar', outside: -1 }],
    ['that is no number', { kind: 'board', width: Number.NaN, thickness: 20 }],
    ['without end', { kind: 'round bar', outside: Number.POSITIVE_INFINITY }],
  ])('%s', (_name, section) => {
    expect(isPossibleSection(section)).toBe(false)
    expect(() => sectionArea(section)).toThrow(/broken promise/)
  })
})
