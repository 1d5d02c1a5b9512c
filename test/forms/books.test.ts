import { describe, expect, test } from 'vitest'
import { lineFinder } from '../../lib/core/ledger/findLine.ts'
import { markBought, putThing, unmarkBought } from '../../lib/forms/books.ts'
import { entryOfDraft, lineOfValue, lineValue, pathInForm } from '../../lib/forms/entryDraft.ts'
import { withoutMarks } from '../../lib/forms/withoutMarks.ts'
import { documentOf, markedBy, notebookOf, on, wire } from '../core/ledger/madeBooks.ts'
import { documentWith } from '../core/madeNotebook.ts'

const find = lineFinder(notebookOf())
const isWire = (line: typeof wire) => find(line)?.path === 'sections[0].materials[0]'
const document = documentWith(documentOf())

describe('marks on a line', () => {
  test('of the two households meet, although the line was moved in between', () => {
    const before = { ...wire, place: '2' } as const
    const marked = markBought(document, before, isWire as never, '5.00', { household: 'a', on })
    const both = markBought(marked, wire, isWire as never, '5.00', { household: 'b', on })
    expect(both.books).toEqual({ bought: [{ ...wire, amount: '5.00', marks: markedBy('a', 'b') }] })
  })

  test('on an amount take the place of those on another', () => {
    const marked = markBought(document, wire, isWire as never, '5.00', { household: 'a', on })
    const moved = markBought(marked, wire, isWire as never, '6.00', { household: 'b', on })
    expect(moved.books).toEqual({ bought: [{ ...wire, amount: '6.00', marks: markedBy('b') }] })
  })

  test('are taken back one by one, and a line without any leaves the list', () => {
    const marked = markBought(document, wire, isWire as never, '5.00', { household: 'a', on })
    expect(unmarkBought(marked, isWire as never, 'b')).toBe(marked)
    expect(unmarkBought(marked, isWire as never, 'a').books).toEqual({ bought: [] })
  })
})

test('a thing keeps its marks while only the day on which it came back is written down', () => {
  const thing = {
    kind: 'leftover',
    what: 'wire',
    item: 's1',
    household: 'b',
    value: '2.00',
    marks: markedBy('a'),
  }
  const kept = documentWith(documentOf([], { things: [thing] }))
  const { marks, ...draft } = thing
  expect(putThing(kept, 0, { ...draft, returned: on }).books).toEqual({
    things: [{ ...draft, returned: on, marks }],
  })
  expect(putThing(kept, 0, { ...draft, household: 'a', marks }).books).toEqual({
    things: [{ ...draft, household: 'a' }],
  })
})

describe('the form of an entry', () => {
  test('names a line in one field, and gets it back whole', () => {
    expect(lineOfValue(lineValue(wire))).toEqual(wire)
    const { entry, earlierIsMeant } = entryOfDraft({
      lines: [{ line: lineValue(wire), amount: '1' }],
      earlierIsMeant: true,
    })
    expect(entry).toEqual({ lines: [{ ...wire, amount: '1' }] })
    expect(earlierIsMeant).toBe(true)
    expect(pathInForm('lines[3].item')).toBe('lines[3].line')
    expect(pathInForm('lines[3].amount')).toBe('lines[3].amount')
  })

  test.each([['x'], ['{}'], ['null'], ['{"item":1}'], [7], [undefined], ['{"__proto__":{"item":"s1"}}']])(
    'takes nothing for a line that is none: %s',
    (value) => {
      expect(lineOfValue(value)).toBeUndefined()
    },
  )
})

test('an import keeps everything but the marks', () => {
  const goods = { household: 'a', kind: 'material', amount: '1', date: on }
  const marks = markedBy('a', 'b')
  const file = documentWith({
    ...documentOf([{ ...goods, valuation: { documented: '1', marks } }, goods], {
      bought: [{ ...wire, amount: '1', marks }],
      things: [{ kind: 'tool', what: 'auger', marks }],
    }),
    unknown: { marks: 'kept' },
  })
  expect(withoutMarks(file)).toEqual(
    documentWith({
      ...documentOf([{ ...goods, valuation: { documented: '1' } }, goods], {
        things: [{ kind: 'tool', what: 'auger' }],
      }),
      unknown: { marks: 'kept' },
    }),
  )
  expect(withoutMarks(document)).toEqual(document)
})
