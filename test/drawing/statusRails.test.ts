import { describe, expect, test } from 'vitest'
import { type StatusLook, statusLooks } from '../../lib/core/agreement/itemStatus.ts'
import type { Shape } from '../../lib/drawing/drawing.ts'
import { lineDrawing } from '../../lib/drawing/lineDrawing.ts'
import { statusRails } from '../../lib/drawing/statusRails.ts'
import { drawingWords } from '../../lib/words/summary/drawingWords.ts'
import { exampleNotebook } from '../pdf/madeSummary.ts'
import { outside, overlapping, textsOf } from './drawnBoxes.ts'

const { notebook } = exampleNotebook()
const words = drawingWords(notebook)
const mixed = {
  sections: notebook.sections.map((_, index): StatusLook => statusLooks[index % 4] ?? 'open'),
  gates: notebook.gates.map((): StatusLook => 'changed'),
}
const plainWords = (text: string) => text.replaceAll('\u00A0', ' ')

const ends = (shape: Shape | undefined) => (shape?.kind === 'polyline' ? shape.points : [])
const slopes = (shapes: readonly Shape[]) =>
  shapes.slice(2).map((shape) => {
    const [from, to] = ends(shape)
    return (to?.y ?? 0) - (from?.y ?? 0)
  })

describe('the rails that tell how a thing stands', () => {
  test('are two where both agreed, one where one did', () => {
    expect(slopes(statusRails('agreed', 10, 90, 5))).toEqual([0, 0])
    expect(slopes(statusRails('one', 10, 90, 5))).toEqual([0])
  })

  test('are a dotted line where it is open', () => {
    const [, , rail] = statusRails('open', 10, 90, 5)
    expect(rail?.kind === 'polyline' && rail.stroke.dash).toEqual([1, 3])
  })

  test('have come down where it was changed, also on the shortest stretch', () => {
    for (const width of [80, 3]) {
      const fallen = slopes(statusRails('changed', 10, 10 + width, 5))
      expect(fallen.length).toBeGreaterThan(0)
      expect(fallen.every((slope) => slope > 0)).toBe(true)
    }
  })

  test.each(statusLooks)('stay between their posts: %s', (look) => {
    for (const shape of statusRails(look, 10, 24, 5))
      for (const { x, y } of ends(shape)) {
        expect(x).toBeGreaterThanOrEqual(10)
        expect(x).toBeLessThanOrEqual(24)
        expect(y).toBeGreaterThanOrEqual(5)
        expect(y).toBeLessThanOrEqual(10)
      }
  })
})

describe.each([248, 544, 576])('the drawing with standings, %d units wide', (widthUnits) => {
  const drawing = lineDrawing(notebook, { widthUnits, words, standings: mixed })

  test('has no two texts on one another and lies inside its box', () => {
    expect(overlapping(drawing)).toEqual([])
    expect(outside(drawing)).toEqual([])
  })

  test('tells each standing in its key and in the name of each part', () => {
    const shown = textsOf(drawing).map(({ text }) => plainWords(text))
    for (const text of ['agreed by both', 'agreed by one alone', 'open', 'changed'])
      expect(shown).toContain(text)
    const names = drawing.parts.map(({ name }) => plainWords(name))
    expect(names.find((name) => name.startsWith('Section 1'))).toMatch(/, agreed by both$/)
    expect(names.find((name) => name.startsWith('Section 3'))).toMatch(/, open$/)
    expect(names.find((name) => name.startsWith('Gate 2'))).toMatch(/, changed$/)
  })

  test('has its key apart where that is asked for, with nothing of it left behind', () => {
    const apart = lineDrawing(notebook, { widthUnits, words, standings: mixed, keyApart: true })
    expect(textsOf(apart).map(({ text }) => text)).not.toContain('boundary line')
    const [key, ...more] = apart.details ?? []
    expect(more).toEqual([])
    expect(key && textsOf(key).map(({ text }) => text)).toContain('boundary line')
    expect(key && outside(key)).toEqual([])
    expect(apart.height).toBeLessThan(drawing.height)
  })

  test('shows no standing where none is asked for, as on paper', () => {
    const plain = lineDrawing(notebook, { widthUnits, words })
    expect(textsOf(plain).map(({ text }) => text)).not.toContain('agreed by both')
    expect(plain.parts.some(({ name }) => name.endsWith(', open'))).toBe(false)
  })
})
