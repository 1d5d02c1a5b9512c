import { describe, expect, test } from 'vitest'
import {
  aluminiumDensity,
  type CrossSection,
  massPerMetre,
  sectionArea,
  steelDensity,
} from '../../lib/core/takeoff/tubeWeight.ts'
import {
  kilogramsPerCubicMetrePerPoundPerCubicFoot,
  kilogramsPerMetrePerPoundPerFoot,
  millimetresPerInch,
} from '../../lib/core/takeoff/unitFactors.ts'

const roundTube = (outsideInches: number, wallInches: number): CrossSection => ({
  kind: 'round tube',
  outside: outsideInches * millimetresPerInch,
  wall: wallInches * millimetresPerInch,
})
const poundsPerFoot = (section: CrossSection, density = steelDensity) =>
  massPerMetre(section, density) / kilogramsPerMetrePerPoundPerFoot

describe('welded and seamless pipe, ASME B36.10M / ASTM A53 table pages: lb/ft within a tenth of a percent and a half digit', () => {
  test.each([
    ['NPS 1¼ schedule 40', 1.66, 0.14, 2.27],
    ['NPS 1½ schedule 40', 1.9, 0.145, 2.72],
    ['NPS 2 schedule 40', 2.375, 0.154, 3.66],
    ['NPS 2½ schedule 40', 2.875, 0.203, 5.8],
    ['NPS 3 schedule 40', 3.5, 0.216, 7.58],
    ['NPS 2 schedule 80', 2.375, 0.218, 5.03],
  ])('%s', (_name, outside, wall, published) => {
    const weight = poundsPerFoot(roundTube(outside, wall))
    expect(Math.abs(weight - published)).toBeLessThan(published * 0.001 + 0.005)
  })
})

describe('the same tables in kg/m', () => {
  test.each([
    ['NPS 1¼ schedule 40', 1.66, 0.14, 3.39],
    ['NPS 2 schedule 40', 2.375, 0.154, 5.44],
    ['NPS 2½ schedule 40', 2.875, 0.203, 8.63],
    ['NPS 3 schedule 40', 3.5, 0.216, 11.29],
    ['NPS 2 schedule 80', 2.375, 0.218, 7.48],
  ])('%s', (_name, outside, wall, published) => {
    const mass = massPerMetre(roundTube(outside, wall), steelDensity)
    expect(Math.abs(mass - published)).toBeLessThan(published * 0.001 + 0.005)
  })
})

test('the trade’s 10.69 (D − t)t lb/ft and 0.0246615 (D − t)t kg/m are this formula at 490 lb/ft³ and 7850 kg/m³ (recomputed)', () => {
  const section: CrossSection = { kind: 'round tube', outside: 2, wall: 1 }
  expect(massPerMetre(section, steelDensity)).toBeCloseTo(0.0246615, 8)
  // 490 lb/ft³ is 7849.05 kg/m³.
  expect(poundsPerFoot(roundTube(2, 1), 7849.05)).toBeCloseTo(10.69014, 4)
})

describe('oilfield tubing, API 5CT table pages: nominal weights include couplings and upsets', () => {
  test.each([
    ['2⅜ in, 0.190 wall', 2.375, 0.19, 4.6, 4.438],
    ['2⅞ in, 0.217 wall', 2.875, 0.217, 6.4, 6.166],
  ])('%s weighs less with plain ends than its nominal weight', (_name, outside, wall, nominal, plainEnd) => {
    const weight = poundsPerFoot(roundTube(outside, wall))
    // The plain-end weight is recomputed, the nominal one published.
    expect(weight).toBeCloseTo(plainEnd, 2)
    expect(nominal / weight).toBeGreaterThan(1.03)
    expect(nominal / weight).toBeLessThan(1.06)
  })
})

describe('square tube, AISC shapes database (an open copy as JSON): lb/ft by nominal wall and rolled corners', () => {
  const squareTube = (side: number, wall: number, corners: 'rolled' | 'sharp'): CrossSection => ({
    kind: 'square tube',
    outside: side * millimetresPerInch,
    wall: wall * millimetresPerInch,
    corners,
  })
  test.each([
    ['2½ × 2½ × ¼', 2.5, 1 / 4, 7.11],
    ['2½ × 2½ × 3/16', 2.5, 3 / 16, 5.59],
    ['2½ × 2½ × 1/8', 2.5, 1 / 8, 3.9],
    ['2 × 2 × 1/8', 2, 1 / 8, 3.05],
  ])('%s', (_name, side, wall, published) => {
    const weight = poundsPerFoot(squareTube(side, wall, 'rolled'))
    expect(Math.abs(weight - published)).toBeLessThan(published * 0.001 + 0.005)
  })

  test.each([
    ['2½ × 2½ × 3/16', 2.5, 0.174, 1.54],
    ['2½ × 2½ × 1/8', 2.5, 0.116, 1.07],
    ['2 × 2 × 1/8', 2, 0.116, 0.84],
    ['2½ × 2½ × ¼', 2.5, 0.233, 1.97],
  ])('%s: area in in² by the wall as designed with', (_name, side, wall, published) => {
    const area = sectionArea(squareTube(side, wall, 'rolled')) / millimetresPerInch ** 2
    expect(Math.abs(area - published)).toBeLessThan(0.006)
  })

  test('sharp corners would overstate it by more than five percent (recomputed: 5.902 lb/ft)', () => {
    expect(poundsPerFoot(squareTube(2.5, 3 / 16, 'sharp'))).toBeCloseTo(5.902, 2)
  })
})

test('aluminium at 2700 kg/m³ is 168.56 lb/ft³ (recomputed), a hair under the 0.098 lb/in³ of an alloy handbook (from memory)', () => {
  expect(aluminiumDensity / kilogramsPerCubicMetrePerPoundPerCubicFoot).toBeCloseTo(168.56, 2)
  const handbook = 0.098 * 1728 * kilogramsPerCubicMetrePerPoundPerCubicFoot
  expect(handbook).toBeCloseTo(2712.6, 1)
  expect(aluminiumDensity / handbook).toBeGreaterThan(0.995)
})
