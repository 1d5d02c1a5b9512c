import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { itemChanges, renamedDecisions } from '../../app/notebook/server/itemChanges.ts'
import { editUndone, type RecordedChange } from '../../lib/forms/editUndone.ts'
import { exampleDocument } from '../../lib/forms/exampleNotebook.ts'
import { readPart, removeItem, writePart } from '../../lib/forms/parts.ts'
import type { NotebookDocument } from '../../lib/forms/readNotebook.ts'

const example = (): NotebookDocument => structuredClone(exampleDocument())

/** What the record has of an edit, newest first, as it is read back. */
function recordOf(before: NotebookDocument, after: NotebookDocument): RecordedChange[] {
  const changes = itemChanges(before, after, renamedDecisions(before, after)).toReversed()
  return changes.map(({ itemKey, previousKey, before: was, after: is }) => ({
    itemKey,
    ...(previousKey === undefined ? {} : { previousKey }),
    before: was === undefined ? null : JSON.parse(JSON.stringify(was)),
    after: is === undefined ? null : JSON.parse(JSON.stringify(is)),
  }))
}

function undone(before: NotebookDocument, after: NotebookDocument, now = after): unknown {
  const answer = editUndone(now, recordOf(before, after))
  return 'next' in answer ? answer.next : answer.not
}

const without = (document: NotebookDocument, ...keys: string[]) =>
  Object.fromEntries(Object.entries(document).filter(([key]) => !keys.includes(key)))

/** Edits that take something away, by what a person does. */
const removals: readonly (readonly [string, (document: NotebookDocument) => NotebookDocument])[] = [
  ['the last section', (document) => removeItem({ ...document, contributions: [] }, 's5')],
  ['a cost line of a section', (document) => changeItem(document, 's1', ({ materials, ...rest }) => rest)],
  ['a basic fence', (document) => changeItem(document, 's2', ({ basicFence, ...rest }) => rest)],
  ['a term', (document) => ({ ...document, terms: (document.terms as unknown[]).slice(1) })],
  ['all terms', (document) => without(document, 'terms')],
  ['a date', (document) => ({ ...document, dates: (document.dates as unknown[]).slice(0, -1) })],
  [
    'the last decision',
    (document) => ({ ...document, decisions: (document.decisions as unknown[]).slice(0, -1) }),
  ],
  ['the checks', (document) => without(document, 'checks')],
  ['the pieces', (document) => without(document, 'inventory')],
  ['the caps', (document) => without(document, 'caps')],
  ['the arrangements', (document) => without(document, 'arrangements')],
  [
    'a station',
    (document) =>
      changeLine(document, (line) => ({ ...line, stations: (line.stations as unknown[]).slice(1) })),
  ],
  ['the title', (document) => ({ ...document, title: '' })],
]

function changeItem(
  document: NotebookDocument,
  id: string,
  change: (item: Record<string, unknown>) => Record<string, unknown>,
): NotebookDocument {
  const part = { part: 'item', id } as const
  return writePart(document, part, change(readPart(document, part) ?? {}), 'take-off')
}

function changeLine(
  document: NotebookDocument,
  change: (line: Record<string, unknown>) => Record<string, unknown>,
): NotebookDocument {
  return { ...document, line: change(document.line as Record<string, unknown>) }
}

describe('an edit that is taken back', () => {
  test.each(removals)('brings back %s as it was', (_what, remove) => {
    const before = example()
    const base = remove === removals[0]?.[1] ? { ...before, contributions: [] } : before
    const after = remove(base)
    const record = recordOf(base, after)
    // A document that has nothing of the kind would test nothing.
    if (JSON.stringify(after) === JSON.stringify(base)) return expect(record).toEqual([])
    expect(record.length).toBeGreaterThan(0)
    expect(undone(base, after)).toEqual(base)
  })

  test('brings all of it back at once, whatever was removed together', () => {
    fc.assert(
      fc.property(fc.subarray([...removals], { minLength: 1 }), (some) => {
        const before = { ...example(), contributions: [] }
        const after = some.reduce<NotebookDocument>((document, [, remove]) => remove(document), before)
        fc.pre(JSON.stringify(after) !== JSON.stringify(before))
        expect(undone(before, after)).toEqual(before)
      }),
    )
  })

  test('is a whole notebook that a file was put in the place of', () => {
    const before = without(example(), 'contributions')
    const after = {
      format: 'mearing-notebook',
      version: 1,
      currency: 'JPY',
      households: { a: { name: 'A' }, b: { name: 'B' } },
    }
    expect(undone(before, after)).toEqual(before)
  })

  test('that reworded a decision gives it its old words, in its place', () => {
    const before = example()
    const [first, ...others] = before.decisions as Record<string, unknown>[]
    const after = { ...before, decisions: [{ ...first, text: 'Otherwise.' }, ...others] }
    expect(undone(before, after)).toEqual(before)
  })

  test('that added an item takes it out again', () => {
    const before = example()
    const added = { id: 'c9', name: 'Skip', materials: [], labour: [] }
    const after = { ...before, common: [...((before.common as unknown[]) ?? []), added] }
    expect(undone(before, after)).toEqual(before)
  })

  test.each<
    [
      string,
      (document: NotebookDocument) => NotebookDocument,
      (after: NotebookDocument) => NotebookDocument,
      string,
    ]
  >([
    [
      'an item that was changed since',
      (document) => changeItem(document, 's1', (item) => ({ ...item, name: 'Other' })),
      (after) => changeItem(after, 's1', (item) => ({ ...item, name: 'Third' })),
      'changed since',
    ],
    [
      'an item that is gone since',
      (document) => changeItem(document, 's5', (item) => ({ ...item, name: 'Other' })),
      (after) => removeItem({ ...after, contributions: [] }, 's5'),
      'changed since',
    ],
    [
      'terms that were changed since',
      (document) => without(document, 'terms'),
      (after) => ({ ...after, terms: [{ topic: 'x', text: 'y' }] }),
      'changed since',
    ],
    [
      'prices, once they would be in another currency',
      (document) => changeItem(document, 's1', ({ materials, ...rest }) => rest),
      (after) => ({ ...after, currency: 'JPY' }),
      'other currency',
    ],
  ])('is refused for %s, and then nothing is given', (_what, change, since, reason) => {
    const before = example()
    const after = change(before)
    expect(undone(before, after, since(after))).toBe(reason)
  })

  test('leaves the count of passages as both have it now', () => {
    const before = changeItem(example(), 'g1', (gate) => ({ ...gate, uses: { a: '1', b: '1' }, name: 'Old' }))
    const after = changeItem(before, 'g1', (gate) => ({ ...gate, uses: { a: '5', b: '6' }, name: 'New' }))
    const next = undone(before, after) as NotebookDocument
    expect(readPart(next, { part: 'item', id: 'g1' })).toMatchObject({
      name: 'Old',
      uses: { a: '5', b: '6' },
    })
  })

  test('of which nothing is on record changes nothing', () => {
    expect(editUndone(example(), [])).toEqual({ not: 'not on record' })
  })
})
