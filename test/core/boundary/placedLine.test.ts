import { describe, expect, test } from 'vitest'
import { compareLengths, lengthOf } from '../../../lib/core/amounts/length.ts'
import { placedLine } from '../../../lib/core/boundary/placedLine.ts'
import { halves, notebookWith } from '../madeNotebook.ts'

const section = (id: string, from: string, to: string, agreed = '6 ft') => ({
  id,
  from,
  to,
  height: { agreed },
  share: halves,
})
const gate = (id: string, at: string, opening = '4 ft') => ({
  id,
  at,
  opening,
  opens: 'toward household a',
  share: halves,
})
const stations = ['0 ft', '96 ft'].map((at) => ({
  at,
  setback: { side: 'a', distance: '2 in' },
  gradeA: '0 in',
  gradeB: '0 in',
}))

const placed = (parts: Record<string, unknown>) => placedLine(notebookWith({ line: { stations }, ...parts }))
const same = (left: Parameters<typeof compareLengths>[0], typed: string) =>
  compareLengths(left, lengthOf(typed)) === 0

describe('a place along the line', () => {
  test('of a gate is half of its clear opening to either side of its middle', () => {
    const [one] = placed({ gates: [gate('g1', '42 ft', '4 ft 1 in')] }).gates
    expect(one && same(one.from, '39 ft 11 1/2 in') && same(one.to, '44 ft 1/2 in')).toBe(true)
  })

  test('of the whole runs from the start to the furthest of all', () => {
    const line = placed({ sections: [section('s1', '0 ft', '100 ft')] })
    expect(same(line.start, '0 ft') && same(line.end, '100 ft')).toBe(true)
  })
})

describe('what clashes is noted, and never more than that', () => {
  test('nothing, where sections touch and the gate stands within one', () => {
    const sections = [section('s1', '0 ft', '40 ft'), section('s2', '40 ft', '96 ft')]
    expect(placed({ sections, gates: [gate('g1', '42 ft')] }).notes).toEqual([])
  })

  test('sections that overlap', () => {
    const sections = [section('s1', '0 ft', '40 ft 1 in'), section('s2', '40 ft', '96 ft')]
    expect(placed({ sections }).notes).toEqual([{ kind: 'sections-overlap', section: 0, other: 1 }])
  })

  test('gates that overlap, though each stands in a section', () => {
    const sections = [section('s1', '0 ft', '96 ft')]
    expect(placed({ sections, gates: [gate('g1', '42 ft'), gate('g2', '44 ft')] }).notes).toEqual([
      { kind: 'gates-overlap', gate: 0, other: 1 },
    ])
  })

  test.each([
    ['a section without a place', section('s1', '', '4 ft'), 'section-without-place'],
    ['a section that runs backwards', section('s1', '9 ft', '4 ft'), 'section-backwards'],
    ['a section of no length', section('s1', '4 ft', '4 ft'), 'section-backwards'],
    ['a section past the end', section('s1', '0 ft', '97 ft'), 'section-past-the-end'],
    ['a section without a height', section('s1', '0 ft', '9 ft', ''), 'section-without-height'],
  ])('%s', (_, one, kind) => {
    expect(placed({ sections: [one] }).notes).toEqual([{ kind, section: 0 }])
  })

  test.each([
    ['a gate without a place', gate('g1', ''), 'gate-without-place'],
    ['a gate without an opening', gate('g1', '9 ft', ''), 'gate-without-opening'],
    ['a gate past the end', gate('g1', '95 ft'), 'gate-past-the-end'],
    ['a gate before the start', gate('g1', '1 ft'), 'gate-past-the-end'],
    ['a gate outside of every section', gate('g1', '50 ft'), 'gate-outside-sections'],
    ['a gate that opens nobody knows where', { ...gate('g1', '9 ft'), opens: '' }, 'swing-unknown'],
  ])('%s', (_, one, kind) => {
    const sections = [section('s1', '0 ft', '20 ft')]
    expect(placed({ sections, gates: [one] }).notes).toEqual([{ kind, gate: 0 }])
  })

  test('a line of which nothing is known', () => {
    expect(placedLine(notebookWith()).notes.map(({ kind }) => kind)).toEqual([
      'nothing-to-draw',
      'setbacks-unknown',
      'grades-unknown',
    ])
  })
})
