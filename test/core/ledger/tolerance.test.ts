import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { agreedItems } from '../../../lib/core/agreement/agreedItems.ts'
import { agreementText, canonicalText } from '../../../lib/core/agreement/canonicalText.ts'
import { moneyText } from '../../../lib/core/amounts/money.ts'
import { beyondInDocument } from '../../../lib/core/ledger/documentBooks.ts'
import { lineName, plannedLines } from '../../../lib/core/ledger/findLine.ts'
import { plannedAgainstActual } from '../../../lib/core/ledger/plannedAgainstActual.ts'
import { beyondTolerance } from '../../../lib/core/ledger/tolerance.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { readDocument } from '../../../lib/forms/readNotebook.ts'
import { bought, documentWith, notebookWith, sectionOf } from '../madeNotebook.ts'
import { randomNotebook } from '../randomNotebook.ts'

const both = { a: { on: '2027-05-01' }, b: { on: '2027-05-01' } }
const wire = { item: 's1', pot: 'materials', what: 'wire', place: '1' }

/** A section of one line planned at 100.00, which came to the price; marked as bought by whom `marks` says. */
function boughtAt(price: string, marks: object = both, tolerance: string | null = '10') {
  return {
    sections: [sectionOf('100.00', { principle: 'equal' })],
    ...(tolerance === null ? {} : { arrangements: { tolerance } }),
    contributions: [
      {
        household: 'a',
        kind: 'cash',
        amount: price,
        date: '2027-04-30',
        for: 's1',
        lines: [{ ...wire, amount: price }],
      },
    ],
    books: { bought: [{ ...wire, amount: price, marks }] },
  }
}

const beyond = (parts: Record<string, unknown>, tolerance = '10') =>
  beyondTolerance(notebookWith(parts), 2, { tolerance }).map(({ id, planned, actual, allowed }) => ({
    id,
    planned,
    actual,
    allowed,
  }))

describe('a tolerance of 10 percent on an item planned at 100.00', () => {
  test('holds at exactly 110.00', () => {
    expect(beyond(boughtAt('110.00'))).toEqual([])
  })

  test('is passed by one cent more', () => {
    expect(beyond(boughtAt('110.01'))).toEqual([
      { id: 's1', planned: 10000n, actual: 11001n, allowed: 11000n },
    ])
  })

  test('is not passed while only one household has marked the line', () => {
    expect(beyond(boughtAt('150.00', { a: { on: '2027-05-01' } }))).toEqual([])
  })

  test('is never passed by an item that came cheaper', () => {
    expect(beyond(boughtAt('1.00'))).toEqual([])
  })

  test('a leftover that somebody keeps at a value that both marked brings the item back under it', () => {
    const parts = boughtAt('115.00')
    const thing = {
      kind: 'leftover',
      what: 'half a roll',
      item: 's1',
      household: 'a',
      value: '5.00',
      marks: both,
    }
    expect(beyond({ ...parts, books: { ...parts.books, things: [thing] } })).toEqual([])
  })

  test('a leftover that one household changed, or took off the list, is reckoned as both marked it, in the file too', () => {
    const parts = boughtAt('115.00')
    const thing = { kind: 'leftover', what: 'half a roll', item: 's1', household: 'a', value: '5.00' }
    const agreed = { ...thing, marks: both }
    for (const changed of [
      { ...thing, value: '0.01', marks: { a: both.a }, agreed },
      { ...thing, marks: { a: both.a }, agreed, off: { on: '2027-05-02', by: 'a' } },
    ]) {
      const whole = { ...parts, books: { ...parts.books, things: [changed] } }
      expect(beyond(whole)).toEqual([])
      expect([...beyondInDocument(documentWith(whole))]).toEqual([])
    }
    const gone = { ...thing, marks: both, off: { on: '2027-05-02', by: 'a' } }
    const whole = { ...parts, books: { ...parts.books, things: [gone] } }
    expect(beyond(whole)).toHaveLength(1)
    expect([...beyondInDocument(documentWith(whole))]).toEqual([['s1', '115.00']])
  })

  test('what one household enters or marks alone after both marked takes nothing beyond it', () => {
    const parts = boughtAt('110.00')
    const more = { ...parts.contributions[0], amount: '90.00', lines: [{ ...wire, amount: '90.00' }] }
    const half = { ...wire, amount: '200.00', marks: { a: both.a } }
    expect(
      beyond({
        ...parts,
        contributions: [...parts.contributions, more],
        books: { bought: [...parts.books.bought, half] },
      }),
    ).toEqual([])
  })

  test('a fraction of a percent is kept: 0.5 percent of 100.00 is 0.50', () => {
    expect(beyond(boughtAt('100.50'), '0.5')).toEqual([])
    expect(beyond(boughtAt('100.51'), '0.5')).toHaveLength(1)
  })

  test('no tolerance agreed: nothing is beyond it', () => {
    expect(beyond(boughtAt('900.00'), '')).toEqual([])
    expect(beyondTolerance(notebookWith(boughtAt('900.00')), 2, undefined)).toEqual([])
  })
})

describe('the marks on an item', () => {
  const inputsOf = (parts: Record<string, unknown>) =>
    canonicalText(agreedItems(documentWith(parts)).find(({ key }) => key === 'item:s1')?.inputs)

  test('stand for the cost once that is beyond the tolerance, and for each further cost anew', () => {
    const within = inputsOf(boughtAt('110.00'))
    const over = inputsOf(boughtAt('110.01'))
    const further = inputsOf(boughtAt('130.00'))
    expect(new Set([within, over, further]).size).toBe(3)
    expect(over).toContain('"beyondTolerance":"110.01"')
    expect(within).not.toContain('beyondTolerance')
  })

  test('stand for the plan alone while nothing is bought, or within the tolerance, or without one', () => {
    const { books: _none, contributions: _neither, ...plan } = boughtAt('110.00')
    expect(inputsOf(boughtAt('110.00'))).toBe(inputsOf(plan))
    expect(inputsOf(boughtAt('900.00', both, ''))).toBe(inputsOf(plan))
    expect(inputsOf(boughtAt('900.00', both, null))).toBe(inputsOf(plan))
  })

  test('what is signed holds nothing of it', () => {
    const { books: _none, contributions: _neither, ...plan } = boughtAt('130.00')
    expect(agreementText(documentWith(boughtAt('130.00')))).toBe(agreementText(documentWith(plan)))
  })

  test('a file that does not hold, whatever is in it, has items all the same', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (one, other) => {
        const document = {
          ...documentWith(boughtAt('130.00')),
          contributions: [
            one,
            { kind: 'cash', amount: other, lines: [{ ...wire, amount: other }], valuation: one },
          ],
          sections: [
            { id: 's1', materials: [one, { what: 'wire', quantity: other, unitPrice: other }], labour: one },
          ],
        }
        expect(agreedItems(document).some(({ key }) => key === 'item:s1')).toBe(true)
      }),
    )
  })

  test('the figure that they stand for is that of the books, for any notebook', () => {
    fc.assert(
      fc.property(randomNotebook, fc.integer({ min: 0, max: 999_999 }), (document, more) => {
        const plan = readDocument(document)
        if (!plan.ok) throw new Error(JSON.stringify(plan.faults))
        const digits = digitsOf(plan.value.notebook)
        const lines = plannedLines(plan.value.notebook).filter(
          ({ pot, line }) => pot === 'materials' && !line.credit,
        )
        const entries = lines.map((line, at) => {
          const amount = moneyText(BigInt(more + at), digits)
          const spent = [{ ...lineName(line), amount }]
          return { household: 'a', kind: 'cash', amount, date: '2027-05-01', for: line.itemId, lines: spent }
        })
        const given = Array.isArray(document.contributions) ? document.contributions : []
        const booked = {
          ...document,
          arrangements: { tolerance: '3' },
          contributions: [...given, ...entries],
        }
        const spent = readDocument(booked)
        if (!spent.ok) throw new Error(JSON.stringify(spent.faults))
        const { items } = plannedAgainstActual(spent.value.notebook, digits)
        const marked = items.flatMap((item) =>
          item.lines
            .filter(({ markable }) => markable >= 0n)
            .map(({ line, markable }) => ({
              ...lineName(line),
              amount: moneyText(markable, digits),
              marks: both,
            })),
        )
        const whole = { ...booked, books: { bought: marked } }
        const read = readDocument(whole)
        if (!read.ok) throw new Error(JSON.stringify(read.faults))
        const told = beyondTolerance(read.value.notebook, digits, { tolerance: '3' })
        expect([...beyondInDocument(whole)]).toEqual(
          told.map(({ id, actual }) => [id, moneyText(actual, digits)]),
        )
      }),
      { numRuns: 60 },
    )
  })

  test('an item with more lines than were bought counts those as planned', () => {
    const parts = boughtAt('115.00')
    const posts = bought('100.00', { what: 'posts' })
    const section = { ...sectionOf('100.00', { principle: 'equal' }), materials: [bought('100.00'), posts] }
    expect(beyond({ ...parts, sections: [section] })).toEqual([])
  })
})
