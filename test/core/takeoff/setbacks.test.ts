import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { lengthOf } from '../../../lib/core/amounts/length.ts'
import { compareRatios } from '../../../lib/core/amounts/ratio.ts'
import { setbackAt, setbackPoints } from '../../../lib/core/boundary/setbackAlong.ts'
import { asNumber, nothing } from '../../../lib/core/takeoff/exact.ts'
import { groundOf } from '../../../lib/core/takeoff/ground.ts'
import { planPath, polygonArea } from '../../../lib/core/takeoff/planPath.ts'
import { areaIn } from '../../../lib/core/takeoff/quantity.ts'
import { reachesAcross, type Strips, stripsOfLine } from '../../../lib/core/takeoff/setbacks.ts'
import { fence, notebookOf, takeOffOf } from './madeFence.ts'

type Place = readonly [at: string, side: 'a' | 'b', distance: string]

function lineOf(places: readonly Place[], more: Record<string, unknown> = {}) {
  return { stations: places.map(([at, side, distance]) => ({ at, setback: { side, distance } })), ...more }
}

function squareFeet({ a, b }: Strips): { a: number; b: number } {
  return { a: asNumber(areaIn('sq ft', a)), b: asNumber(areaIn('sq ft', b)) }
}

function stripsAlong(...places: readonly Place[]) {
  return squareFeet(stripsOfLine(notebookOf([], { line: lineOf(places) })))
}

describe('the strip of land on the other side', () => {
  test('is a trapezoid: 96 ft between 2 in and 4 in are 24 ft²', () => {
    expect(stripsAlong(['0 ft', 'a', '2 in'], ['96 ft', 'a', '4 in'])).toEqual({ a: 24, b: 0 })
  })

  test('is a triangle for each household where the fence crosses the line: 6 in to −6 in over 40 ft', () => {
    expect(stripsAlong(['0 ft', 'a', '6 in'], ['40 ft', 'b', '6 in'])).toEqual({ a: 5, b: 5 })
  })

  test('is nothing on the line, and nothing where one station alone says a setback', () => {
    expect(stripsAlong(['0 ft', 'a', '0 in'], ['40 ft', 'b', '0 in'])).toEqual({ a: 0, b: 0 })
    expect(stripsAlong(['0 ft', 'a', '6 in'])).toEqual({ a: 0, b: 0 })
  })

  const distance = fc.integer({ min: -400, max: 400 })
  const places = fc
    .array(fc.tuple(fc.integer({ min: 1, max: 900 }), distance), { minLength: 2, maxLength: 8 })
    .map((steps) => {
      let at = 0
      return steps.map(([step, off]) => {
        at += step
        return [`${at} in`, off < 0 ? 'b' : 'a', `${Math.abs(off)}/8 in`] as const
      })
    })

  test('a mirrored line mirrors the strips', () => {
    fc.assert(
      fc.property(places, (line) => {
        const mirrored = line.map(([at, side, off]) => [at, side === 'a' ? 'b' : 'a', off] as const)
        const [one, other] = [stripsAlong(...line), stripsAlong(...mirrored)]
        expect(one).toEqual({ a: other.b, b: other.a })
      }),
      { numRuns: 60 },
    )
  })

  // An independent way: the area between line and fence by the shoelace formula, which counts b's land as negative.
  test('is what the shoelace formula gives for the polygon between line and fence', () => {
    fc.assert(
      fc.property(places, (line) => {
        const { stations } = notebookOf([], { line: lineOf(line) }).line
        const points = setbackPoints(stations)
        const path = planPath(stations)
        const corners = [
          ...points.map(({ at }) => path.pointAt(at)),
          ...[...points].reverse().map(({ at, setback }) => path.beside(at, setback)),
        ]
        const { a, b } = stripsOfLine(notebookOf([], { line: lineOf(line) }))
        expect(polygonArea(corners)).toBeCloseTo(asNumber(a) - asNumber(b), 3)
      }),
      { numRuns: 60 },
    )
  })

  test('the shoelace formula gives the areas of two polygons worked elsewhere', () => {
    const area = (...corners: [number, number][]) => polygonArea(corners.map(([x, y]) => ({ x, y })))
    // The first is widely used in teaching; the second is a published input, recomputed, clockwise.
    expect(area([1, 6], [3, 1], [7, 2], [4, 4], [8, 5])).toBe(16.5)
    expect(area([3, 4], [5, 11], [12, 8], [9, 5], [5, 6])).toBe(-30)
  })
})

describe('a hole near the line', () => {
  const answer = (setback: string, radius: string, error = '0 in') =>
    reachesAcross(lengthOf(setback), lengthOf(radius), lengthOf(error))

  test.each([
    ['5 in', '4 in', '0 in', 'no'],
    ['4 in', '4 in', '0 in', 'no'],
    ['3 in', '4 in', '0 in', 'yes'],
    ['-3 in', '4 in', '0 in', 'yes'],
    ['5 in', '4 in', '2 in', 'cannot tell'],
    ['3 in', '4 in', '2 in', 'cannot tell'],
    ['6 in', '4 in', '2 in', 'no'],
    ['1 in', '4 in', '2 in', 'yes'],
  ])('at %s, of %s radius, with the line within %s: %s', (setback, radius, error, expected) => {
    expect(answer(setback, radius, error)).toBe(expected)
  })

  test('cannot be told about where no station says a setback', () => {
    expect(reachesAcross(undefined, lengthOf('4 in'), nothing)).toBe('cannot tell')
    expect(takeOffOf([fence('0 ft', '24 ft')]).setbacks.posts[0]).toMatchObject({
      crosses: 'cannot tell',
      standsOn: 'cannot tell',
    })
  })

  test('each post says on whose land it stands, or that it cannot be told', () => {
    const places: Place[] = [
      ['0 ft', 'a', '8 in'],
      ['24 ft', 'b', '8 in'],
    ]
    const found = takeOffOf([fence('0 ft', '24 ft')], { line: lineOf(places, { error: '1 in' }) })
    expect(found.setbacks.posts.map(({ standsOn, crosses }) => [standsOn, crosses])).toEqual([
      ['a', 'no'],
      ['a', 'yes'],
      ['b', 'yes'],
      ['b', 'no'],
    ])
  })
})

test('the setback anywhere is the same as the one that the drawing uses', () => {
  const { stations } = notebookOf([], {
    line: lineOf([
      ['0 ft', 'a', '2 in'],
      ['24 ft', 'b', '3 in'],
      ['56 ft', 'a', '4 in'],
    ]),
  }).line
  const ground = groundOf(stations)
  const points = setbackPoints(stations)
  for (const typed of ['0 ft', '1 in', '13 ft', '24 ft', '31 ft 7 in', '56 ft']) {
    const [one, other] = [ground.setback(lengthOf(typed)), setbackAt(points, lengthOf(typed))]
    expect(one && other && compareRatios(one, other)).toBe(0)
  }
  expect(ground.setback(lengthOf('57 ft'))).toBeUndefined()
})

test('a line that turns twice by 90 degrees to the left runs back beside itself', () => {
  const { stations } = notebookOf([], {
    line: {
      stations: [
        { at: '0 m' },
        { at: '3 m', angle: { degrees: '90', toward: 'a' } },
        { at: '7 m', angle: { degrees: '90', toward: 'a' } },
      ],
    },
  }).line
  const { x, y } = planPath(stations).pointAt(lengthOf('10 m'))
  expect(x).toBeCloseTo(0, 9)
  expect(y).toBeCloseTo(4000, 9)
})
