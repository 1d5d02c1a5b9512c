import { describe, expect, test } from 'vitest'
import type { Station } from '../../../lib/core/agreement/notebook.ts'
import { compareLengths, lengthOf } from '../../../lib/core/amounts/length.ts'
import { ratio } from '../../../lib/core/amounts/ratio.ts'
import { setbackAlong, setbackAt, setbackPoints } from '../../../lib/core/boundary/setbackAlong.ts'

function station(at: string, side: 'a' | 'b' | '', distance: string): Station {
  return { at, setback: { side, distance }, gradeA: '', gradeB: '', gradeFence: '' }
}

/** Whether two lengths are the same, exactly. */
function same(
  left: { over: bigint; under: bigint } | undefined,
  right: { over: bigint; under: bigint },
): boolean {
  return left !== undefined && compareLengths(left, right) === 0
}

const negative = (length: string) => ratio(-lengthOf(length).over, lengthOf(length).under)

describe('the setback between stations', () => {
  const stations = [
    station('0 ft', 'a', '2 in'),
    station('30 ft', 'a', '4 in'),
    station('40 ft', 'b', '1 in'),
  ]

  test('changes evenly, exactly: a third of the way is a third of the change', () => {
    // 2 in + (4 in − 2 in) · 10/30 = 8/3 in
    expect(same(setbackAt(setbackPoints(stations), lengthOf('10 ft')), lengthOf('2 2/3 in'))).toBe(true)
  })

  test('crosses the line from one household’s land to the other’s', () => {
    // 4 in on a's land to 1 in on b's over 10 ft: zero after 8 ft.
    expect(same(setbackAt(setbackPoints(stations), lengthOf('38 ft')), lengthOf('0 in'))).toBe(true)
    expect(same(setbackAt(setbackPoints(stations), lengthOf('39 ft')), negative('1/2 in'))).toBe(true)
  })

  test('has its least and most at the ends or at a station between', () => {
    const along = setbackAlong(stations, lengthOf('15 ft'), lengthOf('39 ft'))
    expect(along?.whole).toBe(true)
    expect(same(along?.least, negative('1/2 in'))).toBe(true)
    expect(same(along?.most, lengthOf('4 in'))).toBe(true)
  })

  test('does not depend on the order of the stations', () => {
    const along = setbackAlong([...stations].reverse(), lengthOf('0 ft'), lengthOf('10 ft'))
    expect(same(along?.most, lengthOf('2 2/3 in'))).toBe(true)
  })

  test('is not told past the stations', () => {
    const along = setbackAlong(stations, lengthOf('35 ft'), lengthOf('50 ft'))
    expect(along?.whole).toBe(false)
    expect(same(along?.least, negative('1 in'))).toBe(true)
    expect(setbackAlong(stations, lengthOf('41 ft'), lengthOf('50 ft'))).toBeUndefined()
  })

  test('needs a side, but not where the fence stands on the line', () => {
    expect(
      setbackPoints([station('0 ft', '', '2 in'), station('', 'a', '2 in'), station('4 ft', 'a', '')]),
    ).toEqual([])
    expect(setbackPoints([station('0 ft', '', '0 in')])).toHaveLength(1)
  })
})
