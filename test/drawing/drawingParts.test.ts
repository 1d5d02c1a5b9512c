import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { opensToward } from '../../lib/core/boundary/opensToward.ts'
import { hatchMarks } from '../../lib/drawing/hatchMarks.ts'
import { labelRows } from '../../lib/drawing/labelRows.ts'
import { exaggerate, roundFigureUpTo, scaleBar } from '../../lib/drawing/niceScale.ts'
import { valueAt } from '../../lib/drawing/profile.ts'
import { fitted, textWidth } from '../../lib/drawing/textRoom.ts'
import { lengthWords } from '../../lib/words/length.ts'
import { notebookWith } from '../pdf/madeSummary.ts'

describe('labels in rows', () => {
  const label = (centre: number) => ({ label: centre, centre, width: 20 })

  test('stand in the nearest row that has room', () => {
    const { placed } = labelRows([label(50), label(60), label(80), label(90)], { from: 0, to: 200 }, 3)
    expect(placed.map(({ row }) => row)).toEqual([0, 1, 0, 1])
  })

  test('are moved in from the edges, and no further', () => {
    const { placed } = labelRows([label(2), label(199)], { from: 0, to: 200 }, 1)
    expect(placed.map(({ x, centre }) => [x, centre])).toEqual([
      [10, 2],
      [190, 199],
    ])
  })

  test('are left out and counted where no row has room', () => {
    const { placed, leftOut } = labelRows([label(50), label(51), label(52)], { from: 0, to: 200 }, 2)
    expect([placed.length, leftOut]).toEqual([2, 1])
  })
})

describe('scales', () => {
  test.each([
    [1, 1],
    [1.9, 1],
    [2, 2],
    [4.99, 2],
    [7, 5],
    [10, 10],
    [99, 50],
    [1000, 1000],
    [0.5, 0],
  ])('the round figure up to %d is %d', (most, round) => expect(roundFigureUpTo(most)).toBe(round))

  test('a round figure is a one, a two or a five with noughts, and the next one would be too much', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 1e12, noNaN: true }), (most) => {
        const round = roundFigureUpTo(most)
        expect(String(round)).toMatch(/^[125]0*$/)
        expect(round).toBeLessThanOrEqual(most)
        expect(round * (String(round).startsWith('2') ? 2.5 : 2)).toBeGreaterThan(most)
      }),
    )
  })

  test('what can be seen is to scale, what is too small is larger by a round figure, what is too large is smaller', () => {
    expect(exaggerate(100, 0.1, 7, 16).times).toBe(1)
    expect(exaggerate(10, 0.1, 7, 16).times).toBe(10)
    expect(exaggerate(1000, 0.1, 7, 16).times).toBeCloseTo(0.16, 9)
    expect(exaggerate(0, 0.1, 7, 16).times).toBe(1)
  })

  test.each([
    ['ft-in', 0.01, '20 ft'],
    ['metric', 0.01, '10 m'],
    ['ft-in', 2, '2 in'],
    ['metric', 2, '5 cm'],
  ] as const)('a scale bar in %s at %d units a millimetre is a round length', (units, scale, words) => {
    const bar = scaleBar(units, scale, 120)
    if (bar === undefined) throw new Error('no scale bar')
    const shown = lengthWords(bar.exact, units)
    expect(units === 'metric' && words === '5 cm' ? shown.replace('0.05 m', '5 cm') : shown).toBe(words)
    expect(bar.millimetres * scale).toBeLessThanOrEqual(120)
  })
})

describe('the patterns of the households', () => {
  const box = { kind: 'hatch', x: 5, y: 7, width: 60, height: 9 } as const

  test('are lines for a and dots for b, all inside the box', () => {
    const { lines, dots } = hatchMarks({ ...box, household: 'a' })
    expect([lines.length > 5, dots.length]).toEqual([true, 0])
    for (const { from, to } of lines) {
      for (const { x, y } of [from, to]) {
        expect(x >= 5 && x <= 65 && y >= 7 && y <= 16).toBe(true)
      }
      // All at the same slant.
      expect(to.x - from.x).toBeCloseTo(from.y - to.y, 9)
    }
    const dotted = hatchMarks({ ...box, household: 'b' })
    expect([dotted.lines.length, dotted.dots.length > 10]).toEqual([0, true])
    for (const { centre, radius } of dotted.dots) {
      expect(
        centre.x - radius >= 5 &&
          centre.x + radius <= 65 &&
          centre.y - radius >= 7 &&
          centre.y + radius <= 16,
      ).toBe(true)
    }
  })

  test('fit in a strip that stands upright', () => {
    const { lines } = hatchMarks({ ...box, width: 9, height: 70, household: 'a' })
    expect(
      lines.every(({ from, to }) => [from, to].every(({ x, y }) => x >= 5 && x <= 14 && y >= 7 && y <= 77)),
    ).toBe(true)
  })
})

describe('a profile', () => {
  const profile = [
    { at: 0, value: 10 },
    { at: 10, value: 20 },
    { at: 10, value: 30 },
    { at: 20, value: 30 },
  ]

  test.each([
    [-5, 10],
    [0, 10],
    [5, 15],
    [10, 20],
    [15, 30],
    [99, 30],
  ])('at %d is %d', (at, value) => {
    expect(valueAt(profile, at)).toBe(value)
  })

  test('without points is level', () => expect(valueAt([], 7)).toBe(0))
})

describe('a gate opens', () => {
  const { notebook } = notebookWith({ households: { a: { name: 'Mill House' }, b: { name: '' } } })

  test.each([
    ['toward household a', ['a']],
    ['Toward Household B, up the slope', ['b']],
    ['onto the drive of mill house', ['a']],
    ['both ways', ['a', 'b']],
    ['inward', []],
    ['', []],
    ['toward household alpha', []],
    ['away from household a', []],
    ['not toward household b', []],
  ])('as the words say: %s', (opens, toward) => expect(opensToward(notebook, opens)).toEqual(toward))

  test('toward a household whose name is a number or a letter only where it stands as a word', () => {
    const named = notebookWith({ households: { a: { name: 'no. 12' }, b: { name: 'b' } } }).notebook
    expect(opensToward(named, 'toward no. 12')).toEqual(['a'])
    expect(opensToward(named, 'toward no. 120, by the brook')).toEqual([])
    expect(opensToward(named, 'to b')).toEqual(['b'])
  })
})

describe('a text in little room', () => {
  test('is cut with an ellipsis and fits', () => {
    const text = fitted('A long name of a section', 10, 60)
    expect(text).toMatch(/^A long.*…$/)
    expect(textWidth(text, 10)).toBeLessThanOrEqual(60)
  })

  test('is left as it is where it fits, and gone where nothing does', () => {
    expect(fitted('short', 10, 60)).toBe('short')
    expect(fitted('short', 10, 4)).toBe('')
    expect(fitted('x'.repeat(100_000), 10, 60).length).toBeLessThan(20)
  })
})
