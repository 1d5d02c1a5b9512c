import { describe, expect, test } from 'vitest'
import { takeOff } from '../../lib/core/takeoff/takeOff.ts'
import {
  gateRows,
  type LookRow,
  postRows,
  postTitle,
  sectionRows,
  stationRows,
} from '../../lib/words/lookText.ts'
import { notebookWith } from '../core/madeNotebook.ts'
import { fence, gateAt } from '../core/takeoff/madeFence.ts'

const plain = (rows: readonly LookRow[]) =>
  Object.fromEntries(rows.map(({ term, text }) => [term, text.replaceAll('\u00A0', ' ')]))

const notebook = notebookWith({
  line: {
    stations: [
      { at: '0 ft', setback: { side: 'a', distance: '2 in' }, gradeA: '0 in', gradeB: '-3 in' },
      {
        at: '40 ft 6 in',
        setback: { side: 'a', distance: '4 in' },
        angle: { degrees: '12', toward: 'b' },
      },
    ],
  },
  sections: [
    fence('0 ft', '24 ft', { name: 'Lane', infill: 'boards', upkeep: 'both', drainage: 'toward the lane' }),
    fence('24 ft', '40 ft 6 in', { buildUp: undefined, height: { agreed: '5 ft', measuredFrom: 'b' } }),
    fence('', '', { buildUp: undefined, height: {} }),
  ],
  gates: [
    gateAt('30 ft', '4 ft', { stands: 'b', uses: { a: '5', b: '9' }, latch: 'gravity', upkeep: 'a' }),
    gateAt('', '', { passages: { takes: {} } }),
  ],
})
const found = takeOff(notebook)

describe('a section, looked at', () => {
  test('says where, how high from whose ground, of what, and what was counted', () => {
    // By hand: 24 ft at no more than 8 ft are 3 bays between 4 posts; the setback grows from 2 in by 2 in in 40 ft 6 in, to 3.19 in.
    expect(plain(sectionRows(notebook, 0, found))).toEqual({
      Where: '0 ft to 24 ft, 24 ft long',
      Height: '6 ft, from the higher ground',
      Infill: 'boards',
      Drainage: 'toward the lane',
      'Posts and bays': '4 posts; 3 bays',
      'Off the line': 'from 2 in to 3 3/16 in off the line, on the land of no. 12',
      'Kept up by': 'both households',
    })
  })

  test('says what is not said yet, and that without a build-up nothing is counted', () => {
    expect(plain(sectionRows(notebook, 1, found))).toMatchObject({
      Where: '24 ft to 40 ft 6 in, 16 ft 6 in long',
      Height: '5 ft, from the ground of no. 14',
      Infill: 'not said yet',
      'Posts and bays': 'no build-up yet, so none are laid out',
      'Kept up by': 'not said yet',
    })
    expect(plain(sectionRows(notebook, 2, undefined))).toMatchObject({
      Where: 'not said yet',
      Height: 'not said yet',
    })
  })

  test('that is not there has nothing to say', () => {
    expect(sectionRows(notebook, 9, found)).toEqual([])
  })
})

test('a gate says where it stands, who goes through it, its latch and who keeps it', () => {
  expect(plain(gateRows(notebook, 0))).toEqual({
    Where: 'its middle at 30 ft, 4 ft clear, on the land of no. 14',
    'Passages a week': '5 by no. 12, 9 by no. 14',
    Opens: 'not said yet',
    Latch: 'gravity',
    'Kept up by': 'no. 12',
  })
  expect(plain(gateRows(notebook, 1))).toMatchObject({
    Where: 'not said yet',
    'Passages a week': 'counted by each household apart, and not settled yet',
  })
})

test('a station says its setback, its grades and its turn', () => {
  expect(plain(stationRows(notebook, 0))).toEqual({
    'From the start': '0 ft',
    'Off the line': '2 in off the line, on the land of no. 12',
    'Ground of no. 12': '0 in',
    'Ground of no. 14': '-3 in',
  })
  expect(plain(stationRows(notebook, 1))).toMatchObject({
    'From the start': '40 ft 6 in',
    'Ground of no. 12': 'not said yet',
    Turn: '12° toward the land of no. 14',
  })
})

describe('a post, looked at', () => {
  test('says its number and kind, its place, hole, length and who bears it', () => {
    expect(postTitle(notebook, found, 1, 'line post')).toBe('Post 2 of Section 1: Lane, line post')
    expect(plain(postRows(notebook, found, 1))).toMatchObject({
      'From the start': '8 ft',
      Hole: '1 ft wide, 3 ft deep',
      'Borne by': 'Section 1: Lane',
    })
  })

  test('that two share is borne by both, half each', () => {
    const two = notebookWith({
      sections: [fence('0 ft', '16 ft', { id: 's1' }), fence('16 ft', '32 ft', { id: 's2' })],
    })
    const both = takeOff(two)
    // By hand, on level ground: 6 ft + 36 in − 1 3/4 in = 8 ft 10 1/4 in.
    expect(plain(postRows(two, both, 2))).toMatchObject({
      'Length to cut': '8 ft 10 1/4 in',
      'Borne by': 'Section 1 and Section 2, half each',
    })
    expect(plain(sectionRows(two, 0, both))['Posts and bays']).toBe(
      '3 posts, 1 of them shared with a neighbour; 2 bays',
    )
  })

  test('that was measured elsewhere says both places', () => {
    const moved = notebookWith({
      sections: [fence('0 ft', '24 ft', { measured: [{ post: '2', at: '8 ft 6 in', why: 'rock' }] })],
    })
    expect(plain(postRows(moved, takeOff(moved), 1))['From the start']).toBe(
      '8 ft 6 in, measured on site; planned at 8 ft',
    )
  })
})
