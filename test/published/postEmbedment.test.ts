import { describe, expect, test } from 'vitest'
import {
  chainLinkDepth,
  chainLinkHoleDiameter,
  constrainedEmbedment,
  depthAtPressure,
  doublingForPoles,
  lateralBearing,
  nonConstrainedEmbedment,
  type PoleLoad,
  thirdOfHeight,
  twoFeetForSix,
} from '../../lib/core/takeoff/postEmbedment.ts'
import { millimetresPerFoot } from '../../lib/core/takeoff/unitFactors.ts'

const load = (
  forcePounds: number,
  heightFeet: number,
  widthFeet: number,
  lateralPsfPerFoot: number,
): PoleLoad => ({ forcePounds, heightFeet, widthFeet, lateralPsfPerFoot })

describe('IBC 1807.3.2.1, worked in a spreadsheet book of an engineering society’s press (2006)', () => {
  // Its input cell shows 0.5 k; the result line has 0.510 k: P = 510 lb is a reading of that line.
  const published = load(510, 4, 1, 266)

  test('non-constrained: 5.02 ft at S1 = 445 psf', () => {
    const { depthFeet, lateralPsf } = nonConstrainedEmbedment(published)
    expect(depthFeet).toBeCloseTo(5.02, 2)
    expect(Math.round(lateralPsf)).toBe(445)
  })

  test('constrained: 3.19 ft', () => {
    expect(constrainedEmbedment(published).depthFeet).toBeCloseTo(3.19, 2)
  })
})

test('constrained, published: P = 30,000 lb, h = 3 ft, b = 4.5 ft, 700 psf/ft give 1.509 m', () => {
  const { depthFeet } = constrainedEmbedment(load(30_000, 3, 4.5, 700))
  expect((depthFeet * millimetresPerFoot) / 1000).toBeCloseTo(1.509, 3)
})

describe('non-constrained, recomputed by iteration', () => {
  test.each([
    [510, 4, 1, 266, 5.0159],
    [500, 4, 1, 266, 4.9757],
    [300, 3, 1, 100, 5.7481],
    [300, 3, 1, 200, 4.3046],
    [300, 3, 1, 150, 4.8486],
    [300, 3, 1, 300, 3.6485],
    [778.45, 3.3, 1, 300, 5.491],
    [778.45, 3.3, 1, 100, 8.777],
  ])('P = %d lb, h = %d ft, b = %d ft, s = %d psf/ft: %f ft', (force, height, width, soil, depth) => {
    expect(nonConstrainedEmbedment(load(force, height, width, soil)).depthFeet).toBeCloseTo(depth, 3)
  })
})

describe('the equation with the pressure given outright, recomputed', () => {
  test.each([
    [300, 3, 100, 9.4493],
    [300, 5, 200, 6.4677],
  ])('P = %d lb, h = %d ft, S1 = %d psf: %f ft', (forcePounds, heightFeet, pressure, depth) => {
    expect(depthAtPressure({ forcePounds, heightFeet, widthFeet: 1 }, pressure)).toBeCloseTo(depth, 4)
  })
})

test('IBC table 1806.2 (2012 edition): lateral bearing in psf per foot', () => {
  expect(lateralBearing.map(({ psfPerFoot }) => psfPerFoot)).toEqual([1200, 400, 200, 150, 100])
  // IBC 1806.3.4, from memory.
  expect(doublingForPoles).toBe(2)
})

describe('ASTM F567-07 section 5', () => {
  test.each([
    [4, 24],
    [6, 30],
    [8, 36],
    [3, 24],
  ])('a line post of a %i ft fence stands %i in deep', (height, inches) => {
    expect(chainLinkDepth(height).feet * 12).toBeCloseTo(inches, 9)
  })

  test('a 2⅜ in post takes a 9½ in hole, a 4 in one 16 in, a 5 in one 15 in', () => {
    expect(chainLinkHoleDiameter(2.375 / 12).feet * 12).toBeCloseTo(9.5, 9)
    expect(chainLinkHoleDiameter(4 / 12).feet * 12).toBeCloseTo(16, 9)
    expect(chainLinkHoleDiameter(5 / 12).feet * 12).toBeCloseTo(15, 9)
  })
})

test('common practice, no source: a third of the height above ground is a quarter of the post', () => {
  const { feet, rule } = thirdOfHeight(6)
  expect(feet).toBe(2)
  expect(feet / (6 + feet)).toBe(0.25)
  expect(rule).toMatch(/^common practice/)
})

test('common practice, no source: 2 ft for a 6 ft fence, and nothing above', () => {
  expect(twoFeetForSix(6)?.feet).toBe(2)
  expect(twoFeetForSix(6.5)).toBeUndefined()
})
