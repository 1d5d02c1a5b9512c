import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  constrainedEmbedment,
  depthAtPressure,
  nonConstrainedEmbedment,
} from '../../../lib/core/takeoff/postEmbedment.ts'

const loads = fc.record({
  forcePounds: fc.double({ min: 0.01, max: 50_000, noNaN: true }),
  heightFeet: fc.double({ min: 0, max: 30, noNaN: true }),
  widthFeet: fc.double({ min: 0.1, max: 5, noNaN: true }),
  lateralPsfPerFoot: fc.double({ min: 10, max: 2400, noNaN: true }),
})

describe('the depth of a post', () => {
  test('fits the equation at its own pressure, for all loads and soils', () => {
    fc.assert(
      fc.property(loads, (load) => {
        const { depthFeet, lateralPsf } = nonConstrainedEmbedment(load)
        expect(depthAtPressure(load, lateralPsf) / depthFeet).toBeCloseTo(1, 6)
        // The pressure is that at a third of the depth, and no higher than at a third of 12 ft.
        expect(lateralPsf / ((load.lateralPsfPerFoot * Math.min(depthFeet, 12)) / 3)).toBeCloseTo(1, 9)
      }),
    )
  })

  test('grows with the force and shrinks with the soil', () => {
    fc.assert(
      fc.property(loads, (load) => {
        const { depthFeet } = nonConstrainedEmbedment(load)
        const stronger = { ...load, forcePounds: load.forcePounds * 1.5 }
        const firmer = { ...load, lateralPsfPerFoot: load.lateralPsfPerFoot * 1.5 }
        expect(nonConstrainedEmbedment(stronger).depthFeet).toBeGreaterThan(depthFeet)
        expect(nonConstrainedEmbedment(firmer).depthFeet).toBeLessThan(depthFeet)
      }),
    )
  })

  test('has no jump where it passes 12 ft', () => {
    const at = (forcePounds: number) =>
      nonConstrainedEmbedment({ forcePounds, heightFeet: 4, widthFeet: 1, lateralPsfPerFoot: 100 }).depthFeet
    let [low, high] = [100, 100_000]
    for (let step = 0; step < 200; step += 1) {
      const middle = (low + high) / 2
      if (at(middle) < 12) low = middle
      else high = middle
    }
    expect(at(low)).toBeCloseTo(12, 6)
    expect(at(high)).toBeCloseTo(12, 6)
  })

  test('is nothing where there is no force', () => {
    const load = { forcePounds: 0, heightFeet: 4, widthFeet: 1, lateralPsfPerFoot: 100 }
    expect(nonConstrainedEmbedment(load).depthFeet).toBe(0)
    expect(constrainedEmbedment(load).depthFeet).toBe(0)
  })

  test('held at the ground squares to 4.25·P·h/(S3·b), S3 at most that of 12 ft', () => {
    fc.assert(
      fc.property(loads, (load) => {
        const { depthFeet, lateralPsf } = constrainedEmbedment(load)
        const squared = (4.25 * load.forcePounds * load.heightFeet) / (lateralPsf * load.widthFeet)
        if (load.heightFeet > 1e-9) expect(depthFeet ** 2 / squared).toBeCloseTo(1, 9)
        else expect(depthFeet).toBeCloseTo(0, 2)
        const deepest = load.lateralPsfPerFoot * Math.min(depthFeet, 12)
        expect(lateralPsf).toBeCloseTo(deepest, 6)
      }),
    )
  })

  test.each([
    ['no width', { widthFeet: 0 }],
    ['no soil', { lateralPsfPerFoot: 0 }],
    ['a force below zero', { forcePounds: -1 }],
    ['a height that is no number', { heightFeet: Number.NaN }],
  ])('throws on %s', (_name, wrong) => {
    const load = { forcePounds: 300, heightFeet: 3, widthFeet: 1, lateralPsfPerFoot: 100, ...wrong }
    expect(() => nonConstrainedEmbedment(load)).toThrow(/broken promise/)
    expect(() => constrainedEmbedment(load)).toThrow(/broken promise/)
  })
})
