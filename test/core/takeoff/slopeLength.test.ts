import { expect, test } from 'vitest'
import { slopeDegrees, slopeLength } from '../../../lib/core/takeoff/slopeLength.ts'

test('a rail on level ground is as long as its run, on a slope longer, up or down alike', () => {
  expect(slopeLength(2400, 0)).toBe(2400)
  expect(slopeLength(3, 4)).toBe(5)
  expect(slopeLength(3, -4)).toBe(5)
})

test('a slope is measured from level', () => {
  expect(slopeDegrees(10, 0)).toBe(0)
  expect(slopeDegrees(10, 10)).toBeCloseTo(45, 12)
  expect(slopeDegrees(10, -10)).toBeCloseTo(-45, 12)
})
