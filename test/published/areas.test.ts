import { BooleanOperations, Polygon } from '@flatten-js/core'
import { polygonArea as d3Area } from 'd3-polygon'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { lengthOf } from '../../lib/core/amounts/length.ts'
import { setbackPoints } from '../../lib/core/boundary/setbackAlong.ts'
import { asNumber } from '../../lib/core/takeoff/exact.ts'
import { planPath, polygonArea } from '../../lib/core/takeoff/planPath.ts'
import { stripsOfLine } from '../../lib/core/takeoff/setbacks.ts'
import { takeOff } from '../../lib/core/takeoff/takeOff.ts'
import { fence, notebookOf, pipe, quantityOf, takeOffOf } from '../core/takeoff/madeFence.ts'

// Areas against two geometry libraries from the registry, @flatten-js/core and d3-polygon, which know nothing of fences.

type Corner = [x: number, y: number]
const flattenArea = (corners: readonly Corner[]) => new Polygon([...corners]).area()
const d3AreaOf = (corners: readonly Corner[]) => Math.abs(d3Area([...corners]))
const ownArea = (corners: readonly Corner[]) => Math.abs(polygonArea(corners.map(([x, y]) => ({ x, y }))))

/** Cutting asks for polygons that all run the same way round. */
const turnedOneWay = (corners: Corner[]) => new Polygon(d3Area(corners) > 0 ? corners : corners.reverse())

const squareMillimetresPerSquareFoot = 304.8 ** 2

describe('polygons by the shoelace formula', () => {
  test.each<[string, Corner[], number]>([
    // From memory of an example widely used in teaching, recomputed.
    [
      'of five corners, one of them turned in',
      [
        [1, 6],
        [3, 1],
        [7, 2],
        [4, 4],
        [8, 5],
      ],
      16.5,
    ],
    // Corners found in a public text, area recomputed.
    [
      'of five corners, clockwise',
      [
        [3, 4],
        [5, 11],
        [12, 8],
        [9, 5],
        [5, 6],
      ],
      30,
    ],
    // Half of a × b, recomputed.
    [
      'a sight triangle of 25 by 25 ft',
      [
        [0, 0],
        [25, 0],
        [0, 25],
      ],
      312.5,
    ],
    [
      'a sight triangle of 30 by 30 ft',
      [
        [0, 0],
        [30, 0],
        [0, 30],
      ],
      450,
    ],
    [
      'a sight triangle of 10 by 10 ft',
      [
        [0, 0],
        [10, 0],
        [0, 10],
      ],
      50,
    ],
  ])('%s', (_name, corners, area) => {
    expect(ownArea(corners)).toBeCloseTo(area, 9)
    expect(flattenArea(corners)).toBeCloseTo(area, 9)
    expect(d3AreaOf(corners)).toBeCloseTo(area, 9)
  })
})

/** Places along a straight line in inches, each with a setback in quarters of an inch, and at least one place apart. */
const fences = fc
  .array(fc.tuple(fc.integer({ min: 12, max: 900 }), fc.integer({ min: -200, max: 200 })), {
    minLength: 2,
    maxLength: 7,
  })
  .map((steps) => {
    let at = 0
    return steps.map(([step, quarters]) => {
      at += step
      return { at, setback: quarters / 4 }
    })
  })

/** The same with no setback of zero: the library's cutting takes no edges that lie on one another. */
const offTheLine = fences.map((places) =>
  places.map(({ at, setback }) => ({ at, setback: setback === 0 ? 0.25 : setback })),
)

function lineOf(places: readonly { at: number; setback: number }[]) {
  return {
    stations: places.map(({ at, setback }) => ({
      at: `${at} in`,
      setback: { side: setback < 0 ? 'b' : 'a', distance: `${Math.abs(setback)} in` },
    })),
  }
}

describe('strips of land on the other side', () => {
  test('each household’s strip is what @flatten-js/core cuts out between line and fence', () => {
    fc.assert(
      fc.property(offTheLine, (places) => {
        const [first, last] = [places[0]?.at ?? 0, places.at(-1)?.at ?? 0]
        const far = 100
        // All that lies below the fence, cut by what lies above the line and by what lies below it.
        const below = turnedOneWay([
          [first, -far],
          ...places.map(({ at, setback }): Corner => [at, setback]),
          [last, -far],
        ])
        const half = (to: number) =>
          turnedOneWay([
            [first - far, 0],
            [last + far, 0],
            [last + far, to],
            [first - far, to],
          ])
        const landOfA = BooleanOperations.intersect(below, half(2 * far)).area()
        const landOfB = (last - first) * far - BooleanOperations.intersect(below, half(-2 * far)).area()
        const { a, b } = stripsOfLine(notebookOf([], { line: lineOf(places) }))
        expect(asNumber(a) / 25.4 ** 2).toBeCloseTo(landOfA, 5)
        expect(asNumber(b) / 25.4 ** 2).toBeCloseTo(landOfB, 5)
      }),
      { numRuns: 80 },
    )
  })

  test('what a’s strip has more than b’s is what d3-polygon finds between line and fence', () => {
    fc.assert(
      fc.property(fences, (places) => {
        const line = lineOf(places)
        const { stations } = notebookOf([], { line }).line
        const path = planPath(stations)
        const points = setbackPoints(stations)
        const corners = [
          ...points.map(({ at }) => path.pointAt(at)),
          ...points.map(({ at, setback }) => path.beside(at, setback)).reverse(),
        ].map(({ x, y }): Corner => [x, y])
        const { a, b } = stripsOfLine(notebookOf([], { line }))
        const difference = (asNumber(a) - asNumber(b)) / squareMillimetresPerSquareFoot
        // d3-polygon counts clockwise as above zero where y goes up; the corners here go counter-clockwise.
        expect(-d3Area(corners) / squareMillimetresPerSquareFoot).toBeCloseTo(difference, 6)
      }),
      { numRuns: 80 },
    )
  })

  test('at a square turn the strip inside it has a corner less, which the trapezoids leave out', () => {
    const turn = { angle: { degrees: '90', toward: 'a' } }
    const aside = { setback: { side: 'a', distance: '1 ft' } }
    const line = {
      stations: [
        { at: '0 ft', ...aside },
        { at: '20 ft', ...aside, ...turn },
        { at: '50 ft', ...aside },
      ],
    }
    const inPlan: Corner[] = [
      [0, 0],
      [20, 0],
      [20, 30],
      [19, 30],
      [19, 1],
      [0, 1],
    ]
    const { a } = stripsOfLine(notebookOf([], { line }))
    expect(flattenArea(inPlan)).toBeCloseTo(49, 9)
    expect(d3AreaOf(inPlan)).toBeCloseTo(49, 9)
    expect(asNumber(a) / squareMillimetresPerSquareFoot).toBeCloseTo(50, 9)
    // The line itself in plan, by the program, is the libraries' line.
    const { x, y } = planPath(notebookOf([], { line }).line.stations).pointAt(lengthOf('50 ft'))
    expect([x / 304.8, y / 304.8].map((figure) => Math.round(figure * 1e6) / 1e6)).toEqual([20, 30])
  })
})

describe('infill seen from the side', () => {
  const grades = fc.array(fc.integer({ min: -40, max: 40 }), { minLength: 2, maxLength: 5 })
  const slopes = fc.constantFrom('raked', 'stepped')
  /** A layer that weighs 1 kg to the square metre weighs as much as it has area. */
  const weight = { figure: '1', per: 'kg/sq m' }
  const takenOff = (heights: readonly number[], slope: string, infill: Record<string, unknown>) =>
    takeOffOf(
      [
        fence('0 ft', '80 ft', {
          height: { agreed: '6 ft', measuredFrom: 'a' },
          buildUp: { slope, posts: { ...pipe, spacing: '8 ft' }, infill: [{ ...infill, weight }] },
        }),
      ],
      {
        line: {
          stations: heights.map((grade, at) => ({
            at: `${(960 * at) / (heights.length - 1)} in`,
            gradeA: `${grade} in`,
            gradeB: `${grade} in`,
          })),
        },
      },
    )

  test('boards stand plumb: the polygons under the top of each bay have the area that is weighed', () => {
    fc.assert(
      fc.property(grades, slopes, (heights, slope) => {
        const found = takenOff(heights, slope, { kind: 'board', width: '5 1/2 in' })
        const area = (areaOf: (corners: readonly Corner[]) => number) =>
          found.tops.bays.reduce((sum, bay) => {
            const [left, right] = [bay.left, bay.right].map((post) =>
              asNumber(found.layout.posts[post]?.at ?? lengthOf('0 in')),
            )
            const tops = [asNumber(bay.top?.left ?? bay.length), asNumber(bay.top?.right ?? bay.length)]
            const high = 6 * 304.8
            return (
              sum +
              areaOf([
                [left ?? 0, tops[0] ?? 0],
                [right ?? 0, tops[1] ?? 0],
                [right ?? 0, (tops[1] ?? 0) - high],
                [left ?? 0, (tops[0] ?? 0) - high],
              ])
            )
          }, 0)
        const weighed = quantityOf(found, 'infill 1').kilograms
        expect(area(flattenArea) / 1e6).toBeCloseTo(weighed ?? 0, 6)
        expect(area(d3AreaOf) / 1e6).toBeCloseTo(weighed ?? 0, 6)
      }),
      { numRuns: 40 },
    )
  })

  test('a roll follows the slope: the tilted rectangles along each bay have the area that is weighed', () => {
    fc.assert(
      fc.property(grades, slopes, (heights, slope) => {
        const found = takenOff(heights, slope, { kind: 'roll' })
        const high = 6 * 304.8
        const area = found.tops.bays.reduce((sum, bay) => {
          const [run, rise] = [asNumber(bay.length), asNumber(bay.rise)]
          const along = Math.hypot(run, rise)
          const [sideways, down] = [(high * rise) / along, (-high * run) / along]
          return (
            sum +
            flattenArea([
              [0, 0],
              [run, rise],
              [run + sideways, rise + down],
              [sideways, down],
            ])
          )
        }, 0)
        expect(area / 1e6).toBeCloseTo(quantityOf(found, 'infill 1').kilograms ?? 0, 6)
      }),
      { numRuns: 40 },
    )
  })
})

test('a paper plan of a yard: the take-off of its sides adds up to what the corners say', () => {
  // Three sides of a yard of 30 by 40 ft, worked as one line with two turns; its area by both libraries.
  const notebook = notebookOf([fence('0 ft', '100 ft')], {
    line: {
      stations: [
        { at: '0 ft' },
        { at: '30 ft', angle: { degrees: '90', toward: 'a' } },
        { at: '70 ft', angle: { degrees: '90', toward: 'a' } },
        { at: '100 ft' },
      ],
    },
  })
  const path = planPath(notebook.line.stations)
  const corners = ['0 ft', '30 ft', '70 ft', '100 ft'].map((at): Corner => {
    const { x, y } = path.pointAt(lengthOf(at))
    return [x / 304.8, y / 304.8]
  })
  expect(flattenArea(corners)).toBeCloseTo(1200, 6)
  expect(d3AreaOf(corners)).toBeCloseTo(1200, 6)
  expect(ownArea(corners)).toBeCloseTo(1200, 6)
  // 30, 40 and 30 ft at 8 ft are 4, 5 and 4 bays.
  expect(takeOff(notebook).posts).toHaveLength(14)
})
