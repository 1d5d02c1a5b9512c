import { describe, expect, test } from 'vitest'
import { mostElements, withFewerElements } from '../../lib/pdf/fewerElements.ts'
import { type Mark, tagged } from '../../lib/pdf/mark.ts'
import { rootOf, type StructureElement, type Tag } from '../../lib/pdf/structureElement.ts'
import { readLimits } from '../../lib/seal/readLimits.ts'

const text = (said: string, tag: Tag | undefined): Mark =>
  tagged({ kind: 'text', text: said, at: { x: 0, y: 0 }, size: 8, weight: 'regular', ink: 'ink' }, tag)

const table: StructureElement = { role: 'Table' }
const row: StructureElement = { role: 'TR', parent: { role: 'TBody', parent: table } }
const place: StructureElement = { role: 'Sect' }
const drawn: StructureElement = { role: 'Figure', alternative: 'Drawn', parent: place }
const pages: Mark[][] = [
  [
    text('DRAFT', 'pagination'),
    text('title', { role: 'H1' }),
    text('lead', { role: 'P' }),
    text('chapter', { role: 'H2' }),
    text('part', { role: 'H3' }),
    text('one', { role: 'TH', parent: row, scope: 'Row' }),
    text('rule', undefined),
    text('two', { role: 'TD', parent: row }),
  ],
  [
    text('three', { role: 'TD', parent: { role: 'TR', parent: rootOf(row) } }),
    text('stroke', drawn),
    text('stroke', drawn),
    text('name', { role: 'P', parent: place }),
  ],
]
/** Table, two rows, their groups, three cells, Sect, figure, and five of the others. */
const elements = 14

describe('a paper of very many elements', () => {
  test('is left as it is up to the limit', () => {
    expect(withFewerElements(pages)).toBe(pages)
    expect(withFewerElements(pages, elements)).toBe(pages)
    expect(withFewerElements(pages, elements - 1)).not.toBe(pages)
  })

  test('keeps title, chapters and figures, and reads the rest between them as one paragraph', () => {
    const fewer = withFewerElements(pages, 0)
    const found: Tag[] = []
    const told = fewer.map((marks) =>
      marks.map(({ tag }) => {
        if (tag === undefined || tag === 'pagination') return tag
        if (!found.includes(tag)) found.push(tag)
        expect(tag.parent).toBeUndefined()
        return `${tag.role} ${found.indexOf(tag)}`
      }),
    )
    expect(told).toEqual([
      ['pagination', 'H1 0', 'P 1', 'H2 2', 'P 3', 'P 3', undefined, 'P 3'],
      ['P 3', 'Figure 4', 'Figure 4', 'P 5'],
    ])
    expect(found[4]).toEqual({ role: 'Figure', alternative: 'Drawn' })
    // Nothing else about the marks changes.
    const bare = (all: readonly (readonly Mark[])[]) =>
      all.map((marks) => marks.map((one) => tagged(one, undefined)))
    expect(bare(fewer)).toEqual(bare(pages))
  })

  test('stays readable for a check of the record', () => {
    // Each element is an object of at most twelve values, with the two lists that name it.
    expect(mostElements).toBeLessThan(readLimits.objects * 0.7)
    expect(mostElements * 12).toBeLessThan(readLimits.values * 0.8)
  })
})
