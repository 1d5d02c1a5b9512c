import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { asNumber } from '../../../lib/core/takeoff/exact.ts'
import type { WindCheck } from '../../../lib/core/takeoff/windCheck.ts'
import type { WindStep } from '../../../lib/core/takeoff/windStep.ts'
import { feet, fence, findingsOf, gateAt, steelPosts, takeOffOf } from './madeFence.ts'

type Data = Record<string, unknown>

const site = {
  wind: { speed: '100', unit: 'mph', exposure: 'B' },
  soil: { lateral: '200', unit: 'psf/ft' },
  frost: {},
}
const mesh = { kind: 'roll', solid: '8' }
const strips = { kind: 'strip', width: '3 in', opening: '4 in' }
const concrete = { fill: 'concrete' }

function take(buildUp: Data, place: Data = site, section: Data = {}, more: Data = {}) {
  const built = { posts: steelPosts, footing: concrete, infill: [mesh], ...buildUp }
  return takeOffOf([fence('0 ft', '96 ft', { buildUp: built, ...section })], {
    line: { site: place },
    ...more,
  })
}

function look(...asked: Parameters<typeof take>): WindCheck {
  const [check] = take(...asked).wind
  if (check === undefined) throw new Error('a section with a build-up is looked at')
  return check
}

function stepOf<Name extends WindStep['step']>({ steps }: WindCheck, name: Name) {
  const step = steps.find((one) => one.step === name)
  if (step === undefined) throw new Error(`no step ${name}`)
  return step as Extract<WindStep, { step: Name }>
}

const neededFeet = (check: WindCheck) => feet(check.needed)

describe('how much of the outline stops the wind', () => {
  const solid = (buildUp: Data) => stepOf(look(buildUp), 'solid')

  test('strips by width and opening, behind them the mesh counts once', () => {
    // 1 − (1 − 0.08)·(1 − 0.75) = 0.77.
    expect(solid({ infill: [mesh, strips] }).infill).toBeCloseTo(0.77, 9)
  })

  test('boards by width and gap', () => {
    expect(solid({ infill: [{ kind: 'board', width: '5 1/2 in', gap: '1/2 in' }] }).infill).toBeCloseTo(
      5.5 / 6,
      9,
    )
  })

  test('what is typed goes before what is worked out, and more than all is all', () => {
    expect(solid({ infill: [{ ...strips, solid: '50' }] }).infill).toBeCloseTo(0.5, 9)
    expect(solid({ infill: [{ ...strips, solid: '250' }] }).infill).toBe(1)
  })

  test('what is left open below takes no wind', () => {
    // 5 of 6 ft at 60 percent.
    expect(solid({ infill: [{ ...mesh, solid: '60', ground: '1 ft' }] }).infill).toBeCloseTo(0.5, 9)
  })

  test('a layer of half the height counts on its own half', () => {
    const low = { ...mesh, solid: '100', height: '3 ft' }
    expect(solid({ infill: [mesh, low] }).infill).toBeCloseTo(0.54, 9)
  })

  test('rails and posts count with their own area', () => {
    const { rails, posts, whole } = solid({
      infill: [{ ...mesh, solid: '0' }],
      rails: { outside: '3 in', shape: 'round', count: '3' },
    })
    expect(rails).toBeCloseTo(9 / 72, 9)
    expect(posts).toBeCloseTo(2.375 / 96, 9)
    expect(whole).toBeCloseTo(1 - (1 - 9 / 72) * (1 - 2.375 / 96), 9)
  })
})

test('a build-up without infill is not taken for an open fence: it can’t be told until a layer is written down', () => {
  const check = look({ infill: [] })
  expect(check.outcome).toBe('cannot tell')
  expect(check.lacks.map(({ path }) => path)).toEqual(['sections[0].buildUp.infill'])
  expect(look({ infill: [{ ...mesh, solid: '0' }] }).outcome).not.toBe('cannot tell')
})

describe('which bay and which post', () => {
  test('the widest bay, with the run that it is part of', () => {
    const gates = [gateAt('50 ft', '4 ft')]
    const { bay, run } = stepOf(look({}, site, {}, { gates }), 'bay')
    // The posts of the opening are half of 2⅜ in off it: runs of 47.901 and 43.901 ft, in bays of 7.98 and 7.32 ft.
    expect(feet(bay)).toBeCloseTo((48 - 2.375 / 24) / 6, 6)
    expect(feet(run)).toBeCloseTo(48 - 2.375 / 24, 6)
  })

  test('the highest top over the ground under the fence', () => {
    const stations = [
      { at: '0 ft', gradeA: '1 ft', gradeB: '0 ft', gradeFence: '0 ft' },
      { at: '96 ft', gradeA: '0 ft', gradeB: '0 ft', gradeFence: '0 ft' },
    ]
    const check = look({}, site, {}, { line: { site, stations } })
    expect(feet(stepOf(check, 'bay').height)).toBeCloseTo(7, 6)
  })

  test('the shallowest hole of the line posts, and the finding where its depth was measured', () => {
    const measured = [{ post: '4', depth: '20 in' }]
    const found = take({}, { ...site, wind: { ...site.wind, speed: '140' } }, { measured })
    expect(found.wind[0]?.depth && asNumber(found.wind[0].depth)).toBeCloseTo(20 * 25.4, 6)
    expect(findingsOf(found)).toContain('sections[0].measured[0].depth: shallower-than-wind-asks')
  })

  test('an end post that is shallower is not looked at', () => {
    expect(feet(look({ endPosts: { depth: '12 in' } }).depth)).toBeCloseTo(3, 9)
  })

  test('concrete bears with its hole, a driven post with itself, a square one with its diagonal', () => {
    const width = (buildUp: Data) => stepOf(look(buildUp), 'width')
    expect(width({})).toMatchObject({ of: 'concrete' })
    expect(asNumber(width({}).width)).toBeCloseTo(304.8, 9)
    const earth = width({ footing: { fill: 'earth' } })
    expect(earth.of).toBe('post')
    expect(asNumber(earth.width)).toBeCloseTo(2.375 * 25.4, 9)
    const square = width({ footing: {}, posts: { ...steelPosts, shape: 'square', outside: '100 mm' } })
    expect(asNumber(square.width)).toBeCloseTo(141.421356, 5)
  })
})

describe('what comes out', () => {
  test('a shortfall is found where the depth is typed, and strips as what takes the wind', () => {
    const found = take({ infill: [mesh, strips] })
    expect(found.wind[0]?.outcome).toBe('shortfall')
    expect(findingsOf(found)).toEqual([
      'sections[0].buildUp.posts.depth: shallower-than-wind-asks',
      'sections[0].buildUp.infill[1]: catches-wind',
    ])
    expect(found.wind[0]?.catches).toMatchObject([{ layer: 1, kind: 'strip' }])
    expect(found.wind[0]?.catches[0]?.times).toBeGreaterThan(3)
  })

  test('no shortfall in light wind on open mesh, and no finding', () => {
    const found = take({}, { ...site, wind: { speed: '60', unit: 'mph', exposure: 'B' } })
    expect(found.wind[0]?.outcome).toBe('no shortfall')
    expect(findingsOf(found)).toEqual([])
  })

  test('frost is held against the shallowest of all posts, with who said it', () => {
    const found = take(
      { endPosts: { depth: '24 in' } },
      { frost: { depth: '30 in', saidBy: 'permit office' } },
    )
    expect(found.findings).toMatchObject([
      { kind: 'shallower-than-frost', path: 'sections[0].buildUp.endPosts.depth', saidBy: 'permit office' },
    ])
    expect(findingsOf(take({}, { frost: { depth: '36 in' } }))).toEqual([])
  })

  test('each section with a build-up has its own look, in order', () => {
    const found = takeOffOf([
      fence('0 ft', '48 ft'),
      fence('48 ft', '50 ft', { buildUp: undefined }),
      fence('50 ft', '96 ft'),
    ])
    expect(found.wind.map(({ item }) => item.index)).toEqual([0, 2])
  })
})

describe('what is not said it can’t tell', () => {
  const lacks = (check: WindCheck) => check.lacks.map(({ path, what }) => `${path}: ${what}`)

  test.each<[string, Parameters<typeof look>, string]>([
    [
      'the speed',
      [{}, { ...site, wind: { unit: 'mph', exposure: 'B' } }],
      'line.site.wind.speed: wind speed',
    ],
    [
      'a speed of zero',
      [{}, { ...site, wind: { ...site.wind, speed: '0' } }],
      'line.site.wind.speed: wind speed',
    ],
    ['its unit', [{}, { ...site, wind: { ...site.wind, unit: '' } }], 'line.site.wind.unit: wind unit'],
    [
      'the exposure',
      [{}, { ...site, wind: { ...site.wind, exposure: '' } }],
      'line.site.wind.exposure: exposure',
    ],
    ['the soil', [{}, { ...site, soil: { unit: 'psf/ft' } }], 'line.site.soil.lateral: soil value'],
    ['its unit of the soil', [{}, { ...site, soil: { lateral: '150' } }], 'line.site.soil.unit: soil unit'],
    [
      'how open a mesh is',
      [{ infill: [{ kind: 'roll' }] }],
      'sections[0].buildUp.infill[0].solid: solid share',
    ],
    [
      'the width of boards',
      [{ infill: [{ kind: 'board' }] }],
      'sections[0].buildUp.infill[0].solid: solid share',
    ],
    ['a depth', [{ posts: { ...steelPosts, depth: '' } }], 'sections[0].buildUp.posts.depth: hole depth'],
    [
      'a post',
      [{ posts: { ...steelPosts, outside: '', hole: '' } }],
      'sections[0].buildUp.posts.outside: post width',
    ],
    ['a height', [{}, site, { height: { agreed: '' } }], 'sections[0].height.agreed: height'],
    ['a spacing', [{ posts: { ...steelPosts, spacing: '' } }], 'sections[0].buildUp: bays'],
  ])('without %s', (_name, asked, lack) => {
    const check = look(...asked)
    expect(check.outcome).toBe('cannot tell')
    expect(lacks(check)).toContain(lack)
  })

  test('with everything said nothing lacks', () => {
    expect(look({}).lacks).toEqual([])
  })

  test('a notebook without a place finds nothing of wind', () => {
    expect(findingsOf(take({ infill: [mesh, strips] }, {}))).toEqual([])
  })
})

describe('laws', () => {
  const speed = fc.integer({ min: 1, max: 300 })

  test('more wind never asks for less depth', () => {
    fc.assert(
      fc.property(speed, speed, fc.integer({ min: 0, max: 100 }), (one, two, solid) => {
        const at = (figure: number) =>
          look(
            { infill: [{ ...mesh, solid: String(solid) }] },
            { ...site, wind: { ...site.wind, speed: String(figure) } },
          )
        expect(neededFeet(at(Math.max(one, two)))).toBeGreaterThanOrEqual(neededFeet(at(Math.min(one, two))))
      }),
      { numRuns: 60 },
    )
  })

  test('a larger solid share never makes less force while the fence is reckoned the same way', () => {
    // The coefficient of an open fence steps down at 10 and at 30 percent; within a row the force only grows.
    const row = (share: number) => (share >= 0.7 ? 3 : share >= 0.3 ? 2 : share >= 0.1 ? 1 : 0)
    const share = fc.integer({ min: 0, max: 100 })
    fc.assert(
      fc.property(share, share, (one, two) => {
        const at = (solid: number) => look({ infill: [{ ...mesh, solid: String(solid) }] })
        const [less, more] = [at(Math.min(one, two)), at(Math.max(one, two))]
        fc.pre(row(stepOf(less, 'solid').whole) === row(stepOf(more, 'solid').whole))
        expect(stepOf(more, 'force').pounds).toBeGreaterThanOrEqual(stepOf(less, 'force').pounds)
      }),
      { numRuns: 60 },
    )
  })

  test('better soil and a wider hole never ask for more depth', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2000 }), fc.integer({ min: 3, max: 40 }), (lateral, hole) => {
        const at = (soil: number, wide: number) =>
          neededFeet(
            look(
              { posts: { ...steelPosts, hole: `${wide} in` } },
              { ...site, soil: { lateral: String(soil), unit: 'psf/ft' } },
            ),
          )
        expect(at(lateral + 50, hole)).toBeLessThanOrEqual(at(lateral, hole))
        expect(at(lateral, hole + 1)).toBeLessThanOrEqual(at(lateral, hole))
      }),
      { numRuns: 40 },
    )
  })

  test('doubling is the doubled value', () => {
    const soil = (lateral: string, doubled: boolean) =>
      look({}, { ...site, soil: { lateral, unit: 'psf/ft', doubled } })
    expect(soil('150', true).needed).toEqual(soil('300', false).needed)
  })

  test('whatever figures are typed, it never throws', () => {
    const figure = fc.oneof(
      fc.constantFrom('', '0', '0.000001', '999999999999', '1'),
      fc.integer({ min: 0, max: 400 }).map(String),
    )
    fc.assert(
      fc.property(
        figure,
        figure,
        figure,
        fc.constantFrom('', 'B', 'C', 'D'),
        (wind, lateral, solid, exposure) => {
          const check = look(
            { infill: [{ ...mesh, solid }, strips, { kind: 'board', width: '1 in', gap: '999999999 ft' }] },
            {
              wind: { speed: wind, unit: 'km/h', exposure },
              soil: { lateral, unit: 'kPa/m', doubled: true },
            },
          )
          expect(check.outcome === 'cannot tell').toBe(check.lacks.length > 0)
        },
      ),
      { numRuns: 80 },
    )
  })
})
