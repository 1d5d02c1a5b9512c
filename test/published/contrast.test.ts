import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, test } from 'vitest'
import { coloursIn, contrast } from './contrast.ts'

describe('contrast by WCAG 2.2, recomputed', () => {
  test.each([
    ['#000000', '#ffffff', 21],
    ['#767676', '#ffffff', 4.5422],
    ['#777777', '#ffffff', 4.4781],
    // Found in a public text: 2.85.
    ['#999999', '#ffffff', 2.849],
    ['#949494', '#ffffff', 3.0335],
    ['#959595', '#ffffff', 2.9953],
    ['#595959', '#ffffff', 7.0047],
    ['#0000ff', '#ffffff', 8.5925],
    ['#ff0000', '#ffffff', 3.9985],
  ])('%s on %s is %f', (one, other, figure) => {
    expect(contrast(one, other)).toBeCloseTo(figure, 3)
    expect(contrast(other, one)).toBeCloseTo(figure, 3)
  })
})

const sheet = readFileSync(path.join(import.meta.dirname, '../../app/ui/tokens.css'), 'utf8')
const schemes = coloursIn(sheet)

/** Success criterion 1.4.3: text, 4.5. */
const texts = [
  ['ink', 'ground'],
  ['ink', 'sheet'],
  ['ink', 'sunk'],
  ['ink-quiet', 'ground'],
  ['ink-quiet', 'sheet'],
  ['ink-quiet', 'sunk'],
  ['act', 'ground'],
  ['act', 'sheet'],
  ['act-strong', 'sheet'],
  ['on-act', 'act'],
  ['on-act', 'act-strong'],
  ['wrong', 'sheet'],
  ['wrong', 'wrong-sheet'],
  ['ink', 'wrong-sheet'],
  ['grave', 'sheet'],
  ['plum', 'sheet'],
  ['plum', 'plum-soft'],
  ['ochre-text', 'sheet'],
  ['ochre-text', 'ochre-soft'],
]
/** Success criterion 1.4.11: frames, focus and pieces of a drawing, 3. */
const pieces = [
  ['edge', 'sheet'],
  ['edge', 'ground'],
  ['focus', 'ground'],
  ['focus', 'sheet'],
  ['ochre', 'sheet'],
  ['plum', 'sheet'],
]

describe.each(['light', 'dark'] as const)('the colours of the app in the %s scheme', (scheme) => {
  const colour = (name: string | undefined) => {
    const found = schemes[scheme].get(name ?? '')
    if (found === undefined) throw new Error(`the style sheet names no colour ${name}`)
    return found
  }

  test.each(texts)('text: %s on %s has at least 4.5 (WCAG 2.2, 1.4.3, from memory)', (one, other) => {
    expect(contrast(colour(one), colour(other))).toBeGreaterThanOrEqual(4.5)
  })

  test.each(pieces)('piece: %s on %s has at least 3 (WCAG 2.2, 1.4.11, from memory)', (one, other) => {
    expect(contrast(colour(one), colour(other))).toBeGreaterThanOrEqual(3)
  })
})
