import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Drawing } from '../../lib/drawing/drawing.ts'
import { lineDrawing } from '../../lib/drawing/lineDrawing.ts'
import { readNotebook } from '../../lib/forms/readNotebook.ts'
import { drawingNoteText } from '../../lib/words/summary/drawingNoteText.ts'
import { drawingWords } from '../../lib/words/summary/drawingWords.ts'
import { exampleNotebook, notebookWith } from '../pdf/madeSummary.ts'
import { outside, overlapping, textsOf } from './drawnBoxes.ts'

const halves = { materials: { principle: 'equal' }, labour: { principle: 'equal' } }
const phone = 350
const paper = 504

function drawn(read: ReturnType<typeof notebookWith>, widthUnits: number): Drawing {
  return lineDrawing(read.notebook, { widthUnits, words: drawingWords(read.notebook) })
}

const texts = textsOf

describe.each([
  ['on a phone', phone],
  ['on paper', paper],
])('the drawing of the example %s', (_, width) => {
  const drawing = drawn(exampleNotebook(), width)

  test('lies wholly inside its own width and height', () => {
    expect(drawing.width).toBe(width)
    expect(outside(drawing)).toEqual([])
  })

  test('has no two texts that overlap, and none too small to read', () => {
    expect(overlapping(drawing)).toEqual([])
    expect(Math.min(...texts(drawing).map(({ size }) => size))).toBeGreaterThanOrEqual(8)
  })

  test('names both lands, every section and every gate, and the stations as typed', () => {
    const shown = texts(drawing).map(({ text }) => text.replaceAll('\u00A0', ' '))
    for (const text of [
      'Land of no. 12',
      'Land of no. 14',
      'Gate 1',
      'Gate 4',
      '0 ft',
      '132 ft',
      '5 ft 6 in',
    ])
      expect(shown).toContain(text)
    for (const name of ['Lane to the gardens', 'Orchard end', 'Compost gate', 'Mower gate']) {
      expect(shown.some((text) => text.includes(name))).toBe(true)
    }
  })

  test('marks the lands by pattern as well as by colour', () => {
    expect(drawing.shapes.flatMap((shape) => (shape.kind === 'hatch' ? [shape.household] : []))).toEqual([
      'a',
      'b',
    ])
  })

  test('swings each gate toward the household it opens to, at its own width', () => {
    const arcs = drawing.shapes.filter((shape) => shape.kind === 'arc')
    // Gates 1 and 2 open toward a (up), gate 3 toward b (down), gate 4 both ways.
    expect(arcs.map(({ from }) => (from < 0 ? 'a' : 'b'))).toEqual(['a', 'a', 'b', 'a', 'b'])
    const feet = arcs.map(({ radius }) => (radius * drawing.scale.millimetresPerUnit) / 304.8)
    expect(feet.map((one) => Number(one.toFixed(6)))).toEqual([4, 3, 5, 10, 10])
  })

  test('says how much wider it draws distances off the line, and draws them so', () => {
    const { setbacksDrawnWider, millimetresPerUnit } = drawing.scale
    expect(setbacksDrawnWider).toBeGreaterThan(1)
    expect(texts(drawing).map(({ text }) => text)).toContain(
      `Distances off the line are drawn ${setbacksDrawnWider} times wider than to scale.`,
    )
    const line = drawing.shapes.find((shape) => shape.kind === 'polyline' && shape.stroke.dash?.[0] === 14)
    const fence = drawing.shapes.find((shape) => shape.kind === 'polyline' && shape.stroke.width === 2)
    if (line?.kind !== 'polyline' || fence?.kind !== 'polyline') throw new Error('no line or no fence')
    const off = (line.points[0]?.y ?? 0) - (fence.points[0]?.y ?? 0)
    // The first station has 2 in on a's land, which is at the top.
    expect((off * millimetresPerUnit) / setbacksDrawnWider).toBeCloseTo(50.8, 6)
  })
})

describe('what can’t be drawn', () => {
  const kinds = (more: Record<string, unknown>) =>
    drawn(notebookWith(more), paper).notes.map(({ kind }) => kind)
  const section = (id: string, from: string, to: string, more = {}) => ({
    id,
    from,
    to,
    height: { agreed: '6 ft' },
    share: halves,
    ...more,
  })
  const gate = (id: string, at: string, more = {}) => ({
    id,
    at,
    opening: '4 ft',
    opens: 'toward household b',
    share: halves,
    ...more,
  })
  const line = {
    stations: [
      { at: '0 ft', setback: { side: 'a', distance: '1 in' }, gradeA: '0 in' },
      { at: '100 ft', setback: { side: 'a', distance: '1 in' }, gradeA: '0 in' },
    ],
  }

  test('is nothing on a line that is all there', () => {
    expect(kinds({ line, sections: [section('s', '0 ft', '100 ft')], gates: [gate('g', '50 ft')] })).toEqual(
      [],
    )
  })

  test.each([
    ['nothing-to-draw', {}],
    ['station-without-place', { line: { stations: [...line.stations, { at: '' }] } }],
    ['setbacks-unknown', { line: { stations: [{ at: '4 ft', gradeA: '0 in' }] } }],
    ['grades-unknown', { line: { stations: [{ at: '4 ft' }] } }],
    [
      'setbacks-past',
      {
        line: { stations: [line.stations[0], { at: '100 ft', gradeA: '0 in' }] },
        sections: [section('s', '0 ft', '9 ft')],
      },
    ],
    [
      'grades-past',
      {
        line: { stations: [line.stations[0], { at: '100 ft', setback: { distance: '0 in' } }] },
        sections: [section('s', '0 ft', '9 ft')],
      },
    ],
    ['section-without-place', { line, sections: [section('s', '', '4 ft')] }],
    ['section-backwards', { line, sections: [section('s', '8 ft', '8 ft')] }],
    ['section-without-height', { line, sections: [section('s', '0 ft', '8 ft', { height: {} })] }],
    ['section-past-the-end', { line, sections: [section('s', '90 ft', '101 ft')] }],
    ['sections-overlap', { line, sections: [section('s', '0 ft', '20 ft'), section('t', '19 ft', '30 ft')] }],
    ['gate-without-place', { line, gates: [gate('g', '')] }],
    [
      'gate-without-opening',
      { line, sections: [section('s', '0 ft', '20 ft')], gates: [gate('g', '9 ft', { opening: '' })] },
    ],
    ['gate-past-the-end', { line, gates: [gate('g', '1 ft')] }],
    ['gate-outside-sections', { line, gates: [gate('g', '9 ft')] }],
    [
      'gates-overlap',
      { line, sections: [section('s', '0 ft', '20 ft')], gates: [gate('g', '9 ft'), gate('h', '11 ft')] },
    ],
    [
      'swing-unknown',
      { line, sections: [section('s', '0 ft', '20 ft')], gates: [gate('g', '9 ft', { opens: 'inward' })] },
    ],
  ])('is noted: %s', (kind, more) => {
    const read = notebookWith(more)
    const drawing = drawn(read, paper)
    expect(drawing.notes.map((note) => note.kind)).toContain(kind)
    expect(outside(drawing)).toEqual([])
    for (const note of drawing.notes) expect(drawingNoteText(read.notebook, note)).toMatch(/^[A-Z].+\.$/)
  })

  test('is no overlap where two sections or two gates only touch', () => {
    const more = {
      line,
      sections: [section('s', '0 ft', '20 ft'), section('t', '20 ft', '100 ft')],
      gates: [gate('g', '9 ft'), gate('h', '13 ft')],
    }
    expect(kinds(more)).toEqual([])
  })

  test('is told on the drawing where labels find no room', () => {
    const sections = Array.from({ length: 200 }, (_, index) =>
      section(`s${index}`, `${index} ft`, `${index + 1} ft`),
    )
    const drawing = drawn(notebookWith({ sections }), phone)
    expect(overlapping(drawing)).toEqual([])
    expect(texts(drawing).some(({ text }) => /^\d+ labels or swings found no room here/.test(text))).toBe(
      true,
    )
  })
})

describe('whatever the lengths are', () => {
  const length = fc.oneof(
    fc.constant(''),
    fc
      .tuple(fc.integer({ min: 0, max: 999999 }), fc.constantFrom('mm', 'ft', 'in', 'm'))
      .map(([size, unit]) => `${size} ${unit}`),
  )
  const grade = fc
    .tuple(fc.constantFrom('', '-'), length)
    .map(([sign, size]) => (size === '' ? '' : sign + size))
  const side = fc.constantFrom('', 'a', 'b')
  const made = fc.record({
    units: fc.constantFrom('ft-in', 'metric'),
    line: fc.record({
      stations: fc.array(
        fc.record({
          at: length,
          setback: fc.record({ side, distance: length }),
          gradeA: grade,
          gradeB: grade,
          gradeFence: grade,
        }),
        { maxLength: 6 },
      ),
    }),
    sections: fc
      .array(
        fc.record({
          from: length,
          to: length,
          height: fc.record({
            agreed: length,
            measuredFrom: fc.constantFrom('', 'a', 'b', 'higher', 'lower'),
          }),
        }),
        { maxLength: 8 },
      )
      .map((list) =>
        list.map((one, index) => ({ ...one, id: `s${index}`, name: 'A section', share: halves })),
      ),
    gates: fc
      .array(
        fc.record({
          at: length,
          opening: length,
          opens: fc.constantFrom('', 'both ways', 'toward household a'),
        }),
        { maxLength: 8 },
      )
      .map((list) => list.map((one, index) => ({ ...one, id: `g${index}`, share: halves }))),
  })

  test('the drawing stays inside its box, with finite numbers and no two texts on one another', () => {
    fc.assert(
      fc.property(made, fc.constantFrom(phone, paper), (more, width) => {
        const drawing = drawn(notebookWith(more), width)
        expect(Number.isFinite(drawing.height)).toBe(true)
        expect(outside(drawing)).toEqual([])
        expect(overlapping(drawing)).toEqual([])
      }),
      { numRuns: 300, seed: 20270303 },
    )
  })
})

// What was signed may be printed again years later: these are the shapes, all but the texts, of the drawing before posts came.
test.each([
  ['full', 350, 'f2f483b865231db55aebde4937b2ba97ce9df03f5fab098f7afc4bafdae6e157'],
  ['full', 504, 'e7fbc20435a7d1f9b1aedfce29db671bd7f54c385f6b5bf33fba0af44c5c6046'],
])('the %s notebook, which has no build-up, is drawn at %d units as it always was', (name, width, digest) => {
  const file = new URL(`../golden/version-1/${name}/notebook.json`, import.meta.url)
  const read = readNotebook(readFileSync(file))
  if (!read.ok) throw new Error(JSON.stringify(read.faults))
  const shapes = drawn(read.value, width).shapes.filter(({ kind }) => kind !== 'text')
  expect(createHash('sha256').update(JSON.stringify(shapes)).digest('hex')).toBe(digest)
})
