import { describe, expect, test } from 'vitest'
import { lineFinder } from '../../lib/core/ledger/findLine.ts'
import { markBought, unmarkBought } from '../../lib/forms/books.ts'
import { entryOfDraft, lineOfValue, lineValue, pathInForm } from '../../lib/forms/entryDraft.ts'
import { markThing, putThing, putThingBack, takeThingOff, unmarkThing } from '../../lib/forms/things.ts'
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

  const mark = (from: typeof document, amount: string, household: 'a' | 'b') =>
    markBought(from, wire, isWire as never, amount, { household, on })
  const both = (amount: string) => mark(mark(document, amount, 'a'), amount, 'b')
  const entry = (amount: string, ...by: readonly ('a' | 'b')[]) => ({
    ...wire,
    amount,
    marks: markedBy(...by),
  })

  test('on two amounts stand beside each other: neither takes the other’s away', () => {
    expect(mark(mark(document, '5.00', 'a'), '6.00', 'b').books).toEqual({
      bought: [entry('5.00', 'a'), entry('6.00', 'b')],
    })
  })

  test('of one household are one at most: a new one takes the place of its last', () => {
    expect(mark(mark(document, '5.00', 'a'), '6.00', 'a').books).toEqual({ bought: [entry('6.00', 'a')] })
  })

  test('of both stay while another amount waits, and leave once both have marked that', () => {
    const waiting = mark(both('5.00'), '6.00', 'b')
    expect(waiting.books).toEqual({ bought: [entry('5.00', 'a', 'b'), entry('6.00', 'b')] })
    expect(mark(waiting, '6.00', 'a').books).toEqual({ bought: [entry('6.00', 'b', 'a')] })
  })

  test('on the amount that both marked before only take the household’s own waiting one away', () => {
    const waiting = mark(mark(both('5.00'), '6.00', 'b'), '7.00', 'a')
    expect(mark(waiting, '5.00', 'b').books).toEqual({
      bought: [entry('7.00', 'a'), entry('5.00', 'a', 'b')],
    })
  })

  test('that stand already are not set again, so they keep their day', () => {
    const marked = mark(document, '5.00', 'a')
    expect(markBought(marked, wire, isWire as never, '5.00', { household: 'a', on: '2028-01-01' })).toBe(
      marked,
    )
  })

  test('are taken back while they wait, and a line without any leaves the list', () => {
    const marked = mark(document, '5.00', 'a')
    expect(unmarkBought(marked, isWire as never, 'b')).toBe(marked)
    expect(unmarkBought(marked, isWire as never, 'a').books).toEqual({ bought: [] })
  })

  test('of both are taken back by neither alone', () => {
    const marked = both('5.00')
    for (const household of ['a', 'b'] as const)
      expect(unmarkBought(marked, isWire as never, household)).toBe(marked)
    const waiting = mark(marked, '6.00', 'a')
    expect(unmarkBought(waiting, isWire as never, 'a').books).toEqual({ bought: [entry('5.00', 'a', 'b')] })
  })
})

describe('a thing that both marked', () => {
  const plain = { kind: 'leftover', what: 'wire', item: 's1', household: 'b', value: '2.00' }
  const marks = markedBy('a', 'b')
  const agreed = { ...plain, marks }
  const kept = documentWith(documentOf([], { things: [agreed] }))
  const thingIn = (from: typeof kept) => (from.books as { things: object[] }).things[0]
  const changed = putThing(kept, 0, {
    ...plain,
    value: '3.00',
    agreed: { value: '99' },
    off: { on, by: 'a' },
  })

  test('and one changes keeps what both marked beside it, until both mark the change', () => {
    expect(thingIn(changed)).toEqual({ ...plain, value: '3.00', agreed })
    const once = markThing(changed, 0, { household: 'a', on })
    expect(thingIn(once)).toEqual({ ...plain, value: '3.00', agreed, marks: markedBy('a') })
    expect(thingIn(unmarkThing(once, 0, 'a'))).toEqual({ ...plain, value: '3.00', agreed, marks: {} })
    expect(thingIn(markThing(once, 0, { household: 'b', on }))).toEqual({ ...plain, value: '3.00', marks })
  })

  test('and is changed again, or back, is held against what both marked', () => {
    const again = putThing(markThing(changed, 0, { household: 'a', on }), 0, { ...plain, value: '4.00' })
    expect(thingIn(again)).toEqual({ ...plain, value: '4.00', agreed })
    expect(thingIn(putThing(again, 0, plain))).toEqual(agreed)
  })

  test('is taken off the list with the other’s mark, and put back as it was without it', () => {
    const off = takeThingOff(kept, 0, { household: 'b', on })
    expect(thingIn(off)).toEqual({ ...plain, agreed, marks: markedBy('b'), off: { on, by: 'b' } })
    expect(thingIn(putThingBack(off, 0))).toEqual(agreed)
    expect(thingIn(putThingBack(putThingBack(off, 0), 0)), 'it is back already').toEqual(agreed)
    const gone = markThing(off, 0, { household: 'a', on })
    expect(thingIn(gone)).toEqual({ ...plain, marks, off: { on, by: 'b' } })
    expect(thingIn(putThingBack(gone, 0))).toEqual(plain)
  })

  test('and was changed before it was taken off comes back as it was changed', () => {
    const off = takeThingOff(changed, 0, { household: 'b', on })
    expect(thingIn(off)).toMatchObject({ value: '3.00', agreed, marks: markedBy('b') })
    expect(thingIn(putThingBack(off, 0))).toEqual({ ...plain, value: '3.00', agreed })
  })

  test('and changed and changed back while it is being taken off still waits for both', () => {
    const off = takeThingOff(kept, 0, { household: 'b', on })
    const there = putThing(off, 0, { ...plain, value: '3.00' })
    expect(thingIn(there)).toEqual({ ...plain, value: '3.00', agreed, off: { on, by: 'b' } })
    const andBack = putThing(there, 0, plain)
    expect(thingIn(andBack)).toEqual({ ...plain, agreed, off: { on, by: 'b' } })
    expect(thingIn(putThingBack(andBack, 0))).toEqual(agreed)
    const gone = markThing(markThing(andBack, 0, { household: 'a', on }), 0, { household: 'b', on })
    expect(thingIn(gone)).toEqual({ ...plain, marks, off: { on, by: 'b' } })
  })

  test('keeps both marks, whoever takes its own off', () => {
    expect(thingIn(unmarkThing(kept, 0, 'a'))).toEqual(agreed)
  })

  test('is taken off only while it is on the list, and put back only once it is off it', () => {
    expect(thingIn(putThingBack(kept, 0))).toEqual(agreed)
    const off = takeThingOff(kept, 0, { household: 'b', on })
    expect(thingIn(takeThingOff(off, 0, { household: 'a', on }))).toEqual(thingIn(off))
    const gone = markThing(off, 0, { household: 'a', on })
    expect(thingIn(takeThingOff(gone, 0, { household: 'a', on }))).toEqual(thingIn(gone))
    expect(thingIn(putThing(gone, 0, { ...plain, value: '9.00' }))).not.toHaveProperty('agreed')
  })

  test('is off the list at once where only one has marked it', () => {
    const half = documentWith(documentOf([], { things: [{ ...plain, marks: markedBy('a') }] }))
    const off = takeThingOff(half, 0, { household: 'b', on })
    expect(thingIn(off)).toEqual({ ...plain, off: { on, by: 'b' } })
    expect(thingIn(putThingBack(off, 0))).toEqual(plain)
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
      things: [
        {
          kind: 'tool',
          what: 'auger',
          marks,
          agreed: { kind: 'tool', value: '1', marks },
          off: { on, by: 'b' },
        },
      ],
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
