import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { mitreAngle, mitreOffset, saddleDepth, saddleDrop } from '../../../lib/core/takeoff/cope.ts'

describe('a saddle', () => {
  test('of equal tubes is half a diameter deep', () => {
    expect(saddleDepth({ branchDiameter: 60, headerDiameter: 60 })).toBe(30)
  })

  test('lies on the header all around', () => {
    const joint = fc.tuple(
      fc.double({ min: 1, max: 100, noNaN: true }),
      fc.double({ min: 0.05, max: 1, noNaN: true }),
    )
    fc.assert(
      fc.property(joint, fc.double({ min: 0, max: 360, noNaN: true }), ([headerDiameter, part], degrees) => {
        const branchDiameter = headerDiameter * part
        const drop = saddleDrop({ branchDiameter, headerDiameter }, degrees)
        if (drop === undefined) throw new Error('a branch that is no wider than its header')
        const across = (branchDiameter / 2) * Math.sin((degrees * Math.PI) / 180)
        const down = headerDiameter / 2 - drop
        expect(Math.hypot(across, down)).toBeCloseTo(headerDiameter / 2, 9)
        expect(drop).toBeLessThanOrEqual((saddleDepth({ branchDiameter, headerDiameter }) ?? 0) + 1e-9)
      }),
    )
  })

  test('of a tube wider than what it sits on does not exist', () => {
    expect(saddleDepth({ branchDiameter: 61, headerDiameter: 60 })).toBeUndefined()
    expect(saddleDepth({ branchDiameter: Number.NaN, headerDiameter: 60 })).toBeUndefined()
    expect(saddleDepth({ branchDiameter: 0, headerDiameter: 60 })).toBeUndefined()
  })
})

test('a right-angled corner is mitred at 45°, its outer side longer by the tube’s width', () => {
  expect(mitreAngle(90)).toBe(45)
  expect(mitreOffset(60, 90)).toBeCloseTo(60, 9)
})
