import { describe, expect, test } from 'vitest'
import { exampleDocument } from '../../lib/forms/exampleNotebook.ts'
import {
  addItem,
  documentText,
  kindOf,
  moveItem,
  type Part,
  pathOfPart,
  readPart,
  removeItem,
  writePart,
} from '../../lib/forms/parts.ts'
import { type NotebookDocument, readDocument } from '../../lib/forms/readNotebook.ts'
import { documentWith, halves } from '../core/madeNotebook.ts'

const item = (id: string) => ({ id, name: `item ${id}`, share: halves })
const full = documentWith({
  title: 'Orchard line',
  line: { start: 'iron pin' },
  sections: [item('s1'), item('s2'), item('s3')],
  gates: [item('g1')],
  common: [item('c1')],
  terms: [{ topic: 'line', text: 'x' }],
  colour: 'grey',
})
const ids = (document: NotebookDocument, list: string) =>
  (document[list] as { id: string }[]).map(({ id }) => id)

describe('reading a part', () => {
  test('gives the keys of the whole that its form edits', () => {
    expect(readPart(full, { part: 'line' })).toEqual({ line: { start: 'iron pin' } })
    expect(Object.keys(readPart(full, { part: 'heading' }) ?? {})).toEqual([
      'title',
      'currency',
      'households',
    ])
    expect(readPart(full, { part: 'caps' })).toEqual({})
  })

  test('gives the pieces at hand and the kept build-ups each by itself', () => {
    const document = { ...full, inventory: [{ length: '9 ft' }], buildUps: [{ name: 'Ours' }] }
    expect(readPart(document, { part: 'inventory' })).toEqual({ inventory: [{ length: '9 ft' }] })
    expect(readPart(document, { part: 'buildUps' })).toEqual({ buildUps: [{ name: 'Ours' }] })
    expect(writePart(document, { part: 'inventory' }, { inventory: [] })).toEqual({
      ...full,
      buildUps: [{ name: 'Ours' }],
    })
    expect(pathOfPart(document, { part: 'inventory' })).toBe('')
  })

  test('gives an item by its id, and nothing where it is gone', () => {
    expect(readPart(full, { part: 'item', id: 's2' })).toEqual(item('s2'))
    expect(readPart(full, { part: 'item', id: 's9' })).toBeUndefined()
  })
})

describe('writing a part', () => {
  test('changes that part and nothing else', () => {
    const written = writePart(full, { part: 'line' }, { line: { start: 'stone' } })
    expect(written).toEqual({ ...full, line: { start: 'stone' } })
  })

  test('takes a key that is empty now out of the file', () => {
    const written = writePart(
      full,
      { part: 'heading' },
      { ...readPart(full, { part: 'heading' }), title: '' },
    )
    expect('title' in written).toBe(false)
  })

  test('puts a new key where the format has it', () => {
    const keys = Object.keys(writePart(full, { part: 'caps' }, { caps: { a: '5' } }))
    expect(keys.indexOf('caps')).toBe(keys.indexOf('common') + 1)
    expect(keys.at(-1)).toBe('colour')
  })

  test('keeps the id of an item, whatever the form says', () => {
    const written = writePart(full, { part: 'item', id: 's2' }, { ...item('s2'), id: 'other', name: 'new' })
    expect((written.sections as unknown[])[1]).toEqual({ ...item('s2'), name: 'new' })
  })

  test('of an item that is gone changes nothing', () => {
    expect(writePart(full, { part: 'item', id: 's9' }, item('s9'))).toBe(full)
  })

  test('takes no key that another form edits', () => {
    const written = writePart(full, { part: 'line' }, { line: {}, caps: { a: '1' }, version: 9 })
    expect([written.version, 'caps' in written]).toEqual([1, false])
  })
})

describe('a part that was looked at and saved leaves the example as it was, to the letter:', () => {
  const example = exampleDocument()
  const items = ['sections', 'gates', 'common'].flatMap((list) => ids(example, list))
  const parts: Part[] = [
    ...(['heading', 'line', 'caps', 'terms', 'checks', 'decisions'] as const).map((part) => ({ part })),
    ...items.map((id) => ({ part: 'item' as const, id })),
  ]
  test.each(parts.map((part) => [part.part === 'item' ? part.id : part.part, part] as const))(
    '%s',
    (_, part) => {
      const draft = readPart(example, part)
      expect(documentText(writePart(example, part, draft ?? {}))).toBe(documentText(example))
    },
  )
})

test('the path of a part stands before the paths of its fields', () => {
  expect(pathOfPart(full, { part: 'item', id: 's3' })).toBe('sections[2].')
  expect(pathOfPart(full, { part: 'item', id: 'c1' })).toBe('common[0].')
  expect(pathOfPart(full, { part: 'line' })).toBe('')
})

describe('adding an item', () => {
  test('gives it the next free id of its kind, at the end of its list', () => {
    expect(addItem(full, 'section', {}).id).toBe('s4')
    expect(addItem(full, 'gate', {}).id).toBe('g2')
    const { document, id } = addItem(documentWith(), 'common', { name: 'Auger', share: halves })
    expect([id, document.common]).toEqual(['c1', [{ id: 'c1', name: 'Auger', share: halves }]])
  })

  test('takes no id that any item has, of whatever kind', () => {
    const document = documentWith({ sections: [item('x')], gates: [item('s2')], common: [item('s3')] })
    expect(addItem(document, 'section', {}).id).toBe('s4')
  })

  test('takes no id from the form', () => {
    expect(addItem(full, 'section', { id: 's1' }).id).toBe('s4')
  })

  test('never gives a new item the id of one that is gone, whose history it would inherit', () => {
    expect(addItem(full, 'section', {}, ['s4', 's5']).id).toBe('s6')
  })
})

describe('removing an item', () => {
  test('leaves the others in their order', () => {
    expect(ids(removeItem(full, 's2'), 'sections')).toEqual(['s1', 's3'])
    expect(removeItem(full, 's9')).toBe(full)
  })

  test('takes its name off entries that were taken back, and leaves those that count', () => {
    const cash = { household: 'a', kind: 'cash', amount: '1', date: '2027-03-02', for: 's2' }
    const struck = { ...cash, struck: { on: '2027-03-03', by: 'a', why: 'x' } }
    const { for: _gone, ...kept } = struck
    const removed = removeItem({ ...full, contributions: [struck] }, 's2')
    expect(removed.contributions).toEqual([kept])
    expect(readDocument(removed).ok).toBe(true)
    const counting = readDocument(removeItem({ ...full, contributions: [cash] }, 's2'))
    expect(!counting.ok && counting.faults.map(({ kind }) => kind)).toEqual(['id-unknown'])
  })
})

describe('moving an item', () => {
  test('changes its place with its neighbour', () => {
    expect(ids(moveItem(full, 's2', 1), 'sections')).toEqual(['s1', 's3', 's2'])
    expect(ids(moveItem(full, 's2', -1), 'sections')).toEqual(['s2', 's1', 's3'])
  })

  test('beyond either end leaves it where it is', () => {
    expect(ids(moveItem(full, 's1', -1), 'sections')).toEqual(['s1', 's2', 's3'])
    expect(ids(moveItem(full, 's3', 1), 'sections')).toEqual(['s1', 's2', 's3'])
  })

  test('there and back is as before', () => {
    expect(documentText(moveItem(moveItem(full, 's1', 1), 's1', -1))).toBe(documentText(full))
  })
})

test('the kind of an item is told by its list, not by its id', () => {
  const document = documentWith({ gates: [item('s1')] })
  expect([kindOf(document, 's1'), kindOf(document, 'g1')]).toEqual(['gate', undefined])
})
