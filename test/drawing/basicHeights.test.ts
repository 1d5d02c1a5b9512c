import { describe, expect, test } from 'vitest'
import type { Drawing, Shape } from '../../lib/drawing/drawing.ts'
import { lineDrawing } from '../../lib/drawing/lineDrawing.ts'
import { drawingWords } from '../../lib/words/summary/drawingWords.ts'
import { notebookWith } from '../pdf/madeSummary.ts'
import { outside, overlapping, textsOf } from './drawnBoxes.ts'

const halves = { principle: 'equal' }
const difference = { principle: 'difference', basic: '100', basicShare: halves, upgradeShare: halves }

/** One section of 12 m on level ground, 2 m high, with a gate in its middle. */
const drawn = (basicFence: object | undefined, share: object, widthUnits = 500): Drawing => {
  const { notebook } = notebookWith({
    units: 'metric',
    line: { stations: [{ at: '0 m' }, { at: '12 m' }] },
    sections: [
      {
        id: 's1',
        name: 'Meadow',
        from: '0 m',
        to: '12 m',
        height: { agreed: '2 m', measuredFrom: 'higher' },
        ...(basicFence ? { basicFence } : {}),
        share,
      },
    ],
    gates: [{ id: 'g1', name: '', at: '6 m', opening: '1 m', share: { together: halves } }],
  })
  return lineDrawing(notebook, { widthUnits, words: drawingWords(notebook) })
}
const dashed = ({ shapes }: Drawing) =>
  shapes.filter(
    (shape): shape is Extract<Shape, { kind: 'polyline' }> =>
      shape.kind === 'polyline' && shape.stroke.dash?.join() === '3.5,3.5',
  )
const said = (drawing: Drawing) => textsOf(drawing).map(({ text }) => text.replaceAll('\u00A0', ' '))
const plain = { height: '1 m' }

describe('the side view of a section whose share pays the difference', () => {
  test('has the height of its basic fence dashed on each side of the gate, halfway up where it is half as high', () => {
    const drawing = drawn(plain, { together: difference })
    const panel = drawing.shapes.find(
      (shape) => shape.kind === 'polygon' && shape.fill === 'sheet' && shape.points.length === 4,
    )
    if (panel?.kind !== 'polygon') throw new Error('the section is drawn')
    const ys = panel.points.map(({ y }) => y)
    const [top, bottom] = [Math.min(...ys), Math.max(...ys)]

    const runs = dashed(drawing).filter(({ points }) => points[0] && points[0].y < bottom)
    expect(runs).toHaveLength(2)
    for (const { points } of runs) for (const { y } of points) expect(y).toBeCloseTo((top + bottom) / 2, 6)
    const [before, after] = runs.map(({ points }) => points.map(({ x }) => x))
    expect(Math.max(...(before ?? []))).toBeLessThan(Math.min(...(after ?? [])))
  })

  test('names the height, and the sign in the key', () => {
    const drawing = drawn(plain, { materials: difference, labour: halves })
    expect(said(drawing)).toContain('basic 1 m')
    expect(said(drawing)).toContain('height of the basic fence')
    expect(drawing.parts.map(({ name }) => name.replaceAll('\u00A0', ' ')).join()).toContain(
      'the basic fence would be 1 m high',
    )
  })

  test.each([248, 350, 544, 576])('has room for every label at %d units', (width) => {
    const drawing = drawn(plain, { together: difference }, width)
    expect(overlapping(drawing)).toEqual([])
    expect(outside(drawing)).toEqual([])
  })
})

describe('nothing of a basic fence is drawn', () => {
  test.each([
    ['where none is described', undefined, { together: difference }],
    ['where it has no height', { infill: 'wire' }, { together: difference }],
    ['where the share is not held against it', plain, { together: halves }],
  ])('%s', (_, basicFence, share) => {
    const drawing = drawn(basicFence, share)
    expect(dashed(drawing)).toEqual([])
    expect(said(drawing).join()).not.toContain('basic')
  })
})
