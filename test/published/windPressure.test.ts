import { describe, expect, test } from 'vitest'
import { nonConstrainedEmbedment } from '../../lib/core/takeoff/postEmbedment.ts'
import {
  allowableStressFactor,
  exposureCoefficients,
  openingsReduction,
  velocityPressure,
  windOnFence,
} from '../../lib/core/takeoff/windPressure.ts'

const site = (exposureCoefficient: number) => ({
  windMilesPerHour: 115,
  exposureCoefficient,
  topographicFactor: 1,
  directionalityFactor: 0.85,
})
const bay = { heightFeet: 6, lengthFeet: 8, fenceLengthFeet: 96, members: { kind: 'flat' } as const }

describe('ASCE 7 velocity pressure', () => {
  test('published in a permit calculation: 115 mph, Kz 0.70, Kd 0.85 give 20.1 psf', () => {
    expect(velocityPressure(site(0.7))).toBeCloseTo(20.1, 1)
  })

  test('recomputed: exposure C gives 24.461 psf', () => {
    expect(velocityPressure(site(exposureCoefficients.C))).toBeCloseTo(24.461, 3)
  })

  test('the constant is half the density of air in US units (recomputed: 0.0025573, rounded to 0.00256)', () => {
    const halfDensity = 0.5 * (0.0765 / 32.174) * (22 / 15) ** 2
    const perSquareMile = velocityPressure({ ...site(1), directionalityFactor: 1, windMilesPerHour: 1 })
    expect(perSquareMile).toBeCloseTo(halfDensity, 5)
  })

  test('Kz up to 15 ft, recomputed from the exponents of ASCE 7-16: 2.01·(15/zg)^(2/α)', () => {
    const kz = (gradientHeight: number, alpha: number) => 2.01 * (15 / gradientHeight) ** (2 / alpha)
    // Gradient heights and exponents from memory of ASCE 7-16 table 26.11-1.
    expect(kz(1200, 7)).toBeCloseTo(exposureCoefficients.B, 2)
    expect(kz(900, 9.5)).toBeCloseTo(exposureCoefficients.C, 2)
    expect(kz(700, 11.5)).toBeCloseTo(exposureCoefficients.D, 2)
  })
})

// Force coefficients of walls are from memory of ASCE 7-16 figure 29.3-1; the products are recomputed.
describe('a bay of 6 × 8 ft of a solid fence at 24.461 psf', () => {
  const force = windOnFence(24.461, { ...bay, solidShare: 1 })

  test('takes 27.029 psf and 1297.4 lb', () => {
    expect(force).toMatchObject({ reckonedAs: 'wall', forceCoefficient: 1.3, areaSquareFeet: 48 })
    expect(force.pressurePsf).toBeCloseTo(27.029, 3)
    expect(force.forcePounds).toBeCloseTo(1297.4, 1)
  })

  test('acts at 0.55 of the height and asks for 5.491 ft of post in doubled sand', () => {
    expect(force.actsAtFeet).toBeCloseTo(3.3, 9)
    expect(force.momentAtGradePoundFeet).toBeCloseTo(1297.4 * 3.3, 0)
    const forcePounds = force.forcePounds * allowableStressFactor
    expect(forcePounds).toBeCloseTo(778.45, 1)
    const pole = { forcePounds, heightFeet: force.actsAtFeet, widthFeet: 1, lateralPsfPerFoot: 300 }
    expect(nonConstrainedEmbedment(pole).depthFeet).toBeCloseTo(5.491, 3)
  })

  test.each([
    [1, 1.45],
    [2, 1.4],
    [4, 1.35],
    [10, 1.3],
    [40, 1.3],
    [3, 1.375],
  ])('has a coefficient by its length over its height: %d gives %f', (ratio, coefficient) => {
    const { forceCoefficient } = windOnFence(24.461, { ...bay, fenceLengthFeet: 6 * ratio, solidShare: 1 })
    expect(forceCoefficient).toBeCloseTo(coefficient, 9)
  })
})

describe('openings', () => {
  // The formula is from memory of the note to ASCE 7-16 figure 29.3-1; recomputed.
  test.each([
    [0.7, 0.8357],
    [0.8, 0.9106],
    [0.9, 0.9684],
    [1, 1],
  ])('%f solid: the wall’s force times %f', (solidShare, factor) => {
    expect(openingsReduction(solidShare)).toBeCloseTo(factor, 4)
  })

  test('the same bay a fifth solid, of flat members, takes 359.3 lb on its solid part', () => {
    const force = windOnFence(24.461, { ...bay, solidShare: 0.2 })
    expect(force).toMatchObject({ reckonedAs: 'open', forceCoefficient: 1.8 })
    expect(force.forcePounds).toBeCloseTo(359.3, 1)
  })

  // A published permit calculation that quotes ASCE 7-16 figure 29.4-1.
  test.each([
    [0.05, 2.0, 1.2, 0.8],
    [0.2, 1.8, 1.3, 0.9],
    [0.5, 1.6, 1.5, 1.1],
  ])('%f solid: flat %f, thin round %f, thick round %f', (solidShare, flat, thin, thick) => {
    const coefficient = (members: Parameters<typeof windOnFence>[1]['members']) =>
      windOnFence(25, { ...bay, solidShare, members }).forceCoefficient
    expect(coefficient({ kind: 'flat' })).toBe(flat)
    expect(coefficient({ kind: 'round', diameterFeet: 0.5 })).toBe(thin)
    expect(coefficient({ kind: 'round', diameterFeet: 0.51 })).toBe(thick)
  })

  test('no less than 16 psf, by the same calculation', () => {
    expect(windOnFence(5, { ...bay, solidShare: 1 }).pressurePsf).toBe(16)
  })
})
