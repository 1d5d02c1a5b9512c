import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { costByItem } from '../../../lib/core/figures/costByItem.ts'
import { contributed } from '../../../lib/core/ledger/contributed.ts'
import { finalAccountOf } from '../../../lib/core/ledger/finalAccount.ts'
import { plannedAgainstActual } from '../../../lib/core/ledger/plannedAgainstActual.ts'
import { spendingOf, spendingOfAccount, spentByDay } from '../../../lib/core/ledger/spentByDay.ts'
import { spentByItem } from '../../../lib/core/ledger/spentByItem.ts'
import { digitsOf, statementOf } from '../../../lib/core/shares/statement.ts'
import { readDocument } from '../../../lib/forms/readNotebook.ts'
import { notebookWith } from '../madeNotebook.ts'
import { randomNotebook, readMade } from '../randomNotebook.ts'
import { cash, digging, documentOf, scrap, wire } from './madeBooks.ts'
import { bothMarked, settledDocument } from './settledBooks.ts'

const cents = (figure: number) => BigInt(figure)

describe('what was spent on each item', () => {
  test('is what planned against actual has for it, in every notebook', () => {
    fc.assert(
      fc.property(randomNotebook, (document) => {
        const notebook = readMade(document)
        const digits = digitsOf(notebook)
        const spent = spentByItem(notebook, digits)
        const { items, onNothing } = plannedAgainstActual(notebook, digits)
        for (const { id, onLines, onNoLine, things } of items) {
          const { a, b } = spent.get(id) ?? { a: 0n, b: 0n }
          expect(a + b).toBe(onLines + onNoLine - things)
        }
        const whole = spent.get('') ?? { a: 0n, b: 0n }
        expect(whole.a + whole.b).toBe(onNothing)
      }),
    )
  })

  test('is told apart by household, on lines and on none, less what came back and what is kept', () => {
    const notebook = notebookWith(
      documentOf(
        [
          cash('a', '80.00', { ...wire, amount: '60.00' }),
          { ...cash('b', '5.00'), for: 's1' },
          { ...cash('b', '12.00', { ...scrap, amount: '12.00' }), kind: 'refund' },
          {
            household: 'b',
            kind: 'hours',
            hours: '2',
            rate: '10.00',
            date: '2027-04-02',
            for: 's1',
            task: 'dig',
          },
          { household: 'b', kind: 'transfer', amount: '30.00', date: '2027-04-03' },
          {
            ...cash('a', '99.00', { ...wire, amount: '99.00' }),
            struck: { on: '2027-04-09', by: 'a', why: '' },
          },
        ],
        {
          things: [
            {
              kind: 'leftover',
              what: 'wire',
              item: digging.item,
              household: 'a',
              value: '7.00',
              marks: bothMarked,
            },
          ],
        },
      ),
    )
    const spent = spentByItem(notebook, 2)
    // a: 60.00 on wire, less 7.00 that it keeps. b: 5.00 and 20.00 of work, less 12.00 for the old wire.
    expect(spent.get('s1')).toEqual({ a: cents(5300), b: cents(1300) })
    expect(spent.get('')).toEqual({ a: cents(2000), b: 0n })
  })
})

describe('what was spent over time', () => {
  test('ends at what both gave, and each day stands once, in order', () => {
    fc.assert(
      fc.property(randomNotebook, (document) => {
        const notebook = readMade(document)
        const digits = digitsOf(notebook)
        const days = spentByDay(spendingOf(notebook, digits))
        const given = contributed(notebook.contributions, digits)
        const last = days.at(-1)?.spent ?? { a: 0n, b: 0n }
        expect(last.a + last.b).toBe(given.a + given.b)
        const order = days.map(({ on }) => on)
        expect(order).toEqual([...new Set(order)].toSorted())
      }),
    )
  })

  test('adds up day by day in whatever order it was entered, and falls where money came back', () => {
    const on = (day: string, household: 'a' | 'b', amount: string, kind = 'cash') => ({
      ...cash(household, amount),
      date: day,
      kind,
    })
    const notebook = notebookWith(
      documentOf([
        on('2027-05-09', 'b', '4.00'),
        on('2027-05-02', 'a', '10.00'),
        on('2027-05-09', 'a', '1.00'),
        on('2027-06-01', 'a', '15.00', 'refund'),
      ]),
    )
    expect(spentByDay(spendingOf(notebook, 2))).toEqual([
      { on: '2027-05-02', spent: { a: cents(1000), b: 0n } },
      { on: '2027-05-09', spent: { a: cents(1100), b: cents(400) } },
      { on: '2027-06-01', spent: { a: cents(-400), b: cents(400) } },
    ])
  })

  test('is the same from the books and from the final account that was made of them', () => {
    const read = readDocument(settledDocument())
    if (!read.ok) throw new Error('the settled books hold')
    const { notebook } = read.value
    const statement = statementOf(notebook)
    if (!statement.ok) throw new Error('shared')
    const account = finalAccountOf(notebook, statement.value, { number: 1, sha256: 'f'.repeat(64) })
    expect(spendingOfAccount(account, 2)).toEqual(spendingOf(notebook, 2))
    expect(spentByDay(spendingOfAccount(account, 2))).toEqual([
      { on: '2027-05-03', spent: { a: cents(30400), b: 0n } },
    ])
  })
})

describe('cost by item', () => {
  const shared = (prices: readonly number[]) => {
    const statement = statementOf(
      notebookWith({
        common: prices.map((price, at) => ({
          id: `c${at}`,
          materials: [{ what: 'x', quantity: '1', unitPrice: String(price), suppliedBy: 'bought' }],
          share: { materials: { principle: 'equal' }, labour: { principle: 'equal' } },
        })),
      }),
    )
    if (!statement.ok) throw new Error('shared')
    return statement.value
  }

  test('keeps the dearest in the order of the notebook and adds up the others', () => {
    const { items } = shared([5, 1, 9, 2, 7])
    const { items: shown, others } = costByItem(items, new Map(), 4)
    expect(shown.map(({ item }) => item.id)).toEqual(['c0', 'c2', 'c4'])
    expect(others).toEqual({ asked: { a: 150n, b: 150n }, spent: undefined, count: 2 })
  })

  test('loses nothing, however many bars there are', () => {
    fc.assert(
      fc.property(
        fc.array(fc.nat(500), { minLength: 1, maxLength: 12 }),
        fc.integer({ min: 2, max: 14 }),
        (prices, most) => {
          const { items, asked } = shared(prices)
          const spent = new Map([
            ['', { a: 5n, b: -2n }],
            ['c0', { a: 1n, b: 2n }],
          ])
          const costs = costByItem(items, spent, most)
          expect(costs.inAll).toEqual({ asked: { a: asked.a, b: asked.b }, spent: { a: 6n, b: 0n } })
          const bars = [...costs.items, ...(costs.others ? [costs.others] : [])]
          expect(bars.length).toBeLessThanOrEqual(most)
          expect(bars.reduce((sum, one) => sum + one.asked.a, 0n)).toBe(asked.a)
          expect(bars.reduce((sum, one) => sum + (one.spent?.b ?? 0n), costs.onNothing?.b ?? 0n)).toBe(0n)
        },
      ),
    )
  })
})
