import { describe, expect, test } from 'vitest'
import { mitredSaddleGap, mitreOffset, saddleDepth, saddleDrop } from '../../lib/core/takeoff/cope.ts'
import { celsiusRange, heatMovement } from '../../lib/core/takeoff/heatMovement.ts'
import { slopeDegrees, slopeLength } from '../../lib/core/takeoff/slopeLength.ts'

// Saddles: derived from the intersection of two cylinders (general pages on pipe fitting have the same form), recomputed.
describe('the saddle of a tube on a tube, in inches', () => {
  test.each([
    ['2⅜ on 2⅜', 2.375, 2.375, 1.1875],
    ['1.900 on 2⅜', 1.9, 2.375, 0.475],
    ['2⅜ on 2⅞', 2.375, 2.875, 0.62741],
    ['2⅜ on 3½', 2.375, 3.5, 0.46456],
    ['inner edge of 2⅜ × 0.190 on 2⅜', 2.375 - 2 * 0.19, 2.375, 0.54318],
  ])('%s', (_name, branchDiameter, headerDiameter, expected) => {
    expect(saddleDepth({ branchDiameter, headerDiameter })).toBeCloseTo(expected, 5)
  })

  test.each([
    [30, 0.15909],
    [45, 0.34781],
    [60, 0.59375],
    [0, 0],
  ])('2⅜ on 2⅜ at %i° around', (degrees, expected) => {
    expect(saddleDrop({ branchDiameter: 2.375, headerDiameter: 2.375 }, degrees)).toBeCloseTo(expected, 5)
  })

  test('two cuts at 45° in its place leave 0.4919 in of gap at most', () => {
    expect(mitredSaddleGap(2.375)).toBeCloseTo(0.4919, 4)
    // Derived: around the tube the flat cut lies R·sin θ deep, the saddle R·(1 − cos θ).
    const radius = 2.375 / 2
    const gaps = Array.from({ length: 91 }, (_, degrees) => {
      const flat = radius * Math.sin((degrees * Math.PI) / 180)
      return flat - (saddleDrop({ branchDiameter: 2.375, headerDiameter: 2.375 }, degrees) ?? 0)
    })
    expect(Math.max(...gaps)).toBeCloseTo(mitredSaddleGap(2.375), 9)
    expect(gaps.indexOf(Math.max(...gaps))).toBe(45)
  })
})

// The rule is found on general pages on mitres; recomputed.
describe('a mitre of 2⅜ in tube is longer outside than inside by', () => {
  test.each([
    [90, 2.375],
    [45, 0.98376],
    [30, 0.63638],
    [0, 0],
  ])('a turn of %i°', (turn, expected) => {
    expect(mitreOffset(2.375, turn)).toBeCloseTo(expected, 5)
  })
})

describe('lengths on a slope, recomputed', () => {
  test.each([
    [100, 10, 100.498756],
    [8, 1, 8.062258],
    [100, 20, 101.98039],
  ])('%i along and %i up', (run, rise, expected) => {
    expect(slopeLength(run, rise)).toBeCloseTo(expected, 6)
    expect(slopeLength(run, -rise)).toBeCloseTo(expected, 6)
  })

  test('10 in 100 is 5.7106°', () => {
    expect(slopeDegrees(100, 10)).toBeCloseTo(5.7106, 4)
    expect(slopeDegrees(100, -10)).toBeCloseTo(-5.7106, 4)
  })
})

test('common practice, no source: 100 ft of steel moves by about 0.8 in over 100 °F', () => {
  expect(heatMovement(100 * 12, celsiusRange(100))).toBeCloseTo(0.8, 9)
})
