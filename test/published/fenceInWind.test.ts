import { describe, expect, test } from 'vitest'
import { asNumber } from '../../lib/core/takeoff/exact.ts'
import {
  metresPerSecondPerMileAnHour,
  pascalsPerPoundPerSquareFoot,
} from '../../lib/core/takeoff/unitFactors.ts'
import type { WindStep } from '../../lib/core/takeoff/windStep.ts'
import { feet, fence, takeOffOf } from '../core/takeoff/madeFence.ts'

type Data = Record<string, unknown>

const wind = { speed: '115', unit: 'mph', exposure: 'C' }
const sand = { lateral: '150', unit: 'psf/ft', doubled: true }

/** A level run of 96 ft in bays of 8 ft, 6 ft high, holes of 12 in with concrete, of nothing but a layer of so many percent. */
function looked(solid: string, site: Data, more: Data = {}) {
  const found = takeOffOf(
    [
      fence('0 ft', '96 ft', {
        buildUp: {
          // Posts as thin as a thread, so that the infill alone takes the wind, as in the worked example.
          posts: { outside: '0.000001 in', spacing: '8 ft', hole: '12 in', depth: '36 in' },
          footing: { fill: 'concrete' },
          infill: [{ kind: 'panel', solid }],
          ...more,
        },
      }),
    ],
    { line: { site } },
  )
  const [check] = found.wind
  if (check === undefined) throw new Error('a section with a build-up is looked at')
  return check
}

function stepOf<Name extends WindStep['step']>(check: ReturnType<typeof looked>, name: Name) {
  const step = check.steps.find((one) => one.step === name)
  if (step === undefined) throw new Error(`no step ${name}`)
  return step as Extract<WindStep, { step: Name }>
}

// ASCE 7-16 (force coefficients of walls from memory of figure 29.3-1) and IBC 1807.3.2.1; the products are recomputed.
describe('a bay of 6 × 8 ft of a solid fence in a wind of 115 mph, exposure C', () => {
  const check = looked('100', { wind, soil: sand })

  test('the wind presses with 24.461 psf', () => {
    expect(stepOf(check, 'pressure').psf).toBeCloseTo(24.461, 3)
  })

  test('it takes 27.029 psf and 1297.4 lb, 778.45 lb of them for the soil', () => {
    expect(stepOf(check, 'force')).toMatchObject({ reckonedAs: 'wall', least: false })
    expect(stepOf(check, 'force').psf).toBeCloseTo(27.029, 3)
    expect(stepOf(check, 'force').pounds).toBeCloseTo(1297.4, 1)
    expect(stepOf(check, 'allowable').pounds).toBeCloseTo(778.45, 1)
  })

  test('at 3.3 ft over the ground', () => {
    expect(feet(stepOf(check, 'moment').actsAt)).toBeCloseTo(3.3, 6)
    expect(stepOf(check, 'moment').poundFeet).toBeCloseTo(1297.4 * 3.3, 0)
  })

  test('in sand of 150 psf/ft taken twice the posts ask for 5.491 ft, and 3 ft fall short', () => {
    expect(feet(check.needed)).toBeCloseTo(5.491, 3)
    expect(check.outcome).toBe('shortfall')
  })

  test('in clay of 100 psf/ft for 8.777 ft', () => {
    const inClay = looked('100', { wind, soil: { lateral: '100', unit: 'psf/ft' } })
    expect(feet(inClay.needed)).toBeCloseTo(8.777, 3)
  })
})

test('the same bay a fifth solid, of flat members, takes 359.3 lb', () => {
  const force = stepOf(looked('20', { wind, soil: sand }), 'force')
  expect(force).toMatchObject({ reckonedAs: 'open', coefficient: 1.8 })
  expect(force.pounds).toBeCloseTo(359.3, 1)
})

describe('the same place in other units asks for the same depth', () => {
  // 1 mi/h = 0.44704 m/s and 1 lbf/ft² = 47.88026 Pa (NIST SP 811, appendix B); 1 ft = 0.3048 m.
  const depth = feet(looked('100', { wind, soil: sand }).needed)
  const metresPerSecond = 115 * 0.44704
  const kilopascals = (150 * 47.88026) / 1000 / 0.3048

  test('the factors are those of NIST SP 811', () => {
    expect(metresPerSecondPerMileAnHour).toBe(0.44704)
    expect(pascalsPerPoundPerSquareFoot).toBeCloseTo(47.88026, 5)
  })

  test.each([
    ['m/s', metresPerSecond],
    ['km/h', metresPerSecond * 3.6],
  ])('wind in %s', (unit, speed) => {
    const other = looked('100', { wind: { ...wind, unit, speed: speed.toFixed(6) }, soil: sand })
    expect(feet(other.needed)).toBeCloseTo(depth, 5)
  })

  test('soil in kPa/m', () => {
    const soil = { ...sand, unit: 'kPa/m', lateral: kilopascals.toFixed(6) }
    expect(feet(looked('100', { wind, soil }).needed)).toBeCloseTo(depth, 4)
  })
})

describe('common practice beside it', () => {
  // ASTM F567-07 section 5: 30 in for 6 ft. The third of the height and the 2 ft are common practice, no source.
  test('2 ft, a third of 6 ft, 30 in, and the frost as it was said', () => {
    const { rules } = looked('100', { wind, soil: sand, frost: { depth: '42 in' } })
    expect(
      rules.map(({ rule, depth, reached }) => [rule, Math.round(asNumber(depth) / 25.4), reached]),
    ).toEqual([
      ['two feet', 24, true],
      ['third of height', 24, true],
      ['chain link', 30, true],
      ['frost', 42, false],
    ])
  })
})
