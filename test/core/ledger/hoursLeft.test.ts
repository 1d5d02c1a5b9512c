import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { moneyText } from '../../../lib/core/amounts/money.ts'
import { actualsOf } from '../../../lib/core/ledger/actual.ts'
import { lineFinder, lineName, plannedLines } from '../../../lib/core/ledger/findLine.ts'
import { stillInMoney } from '../../../lib/core/ledger/stillInMoney.ts'
import { statementOf } from '../../../lib/core/shares/statement.ts'
import { halves, notebookWith } from '../madeNotebook.ts'
import { digging, markedBy, notebookOf, on, pipe, scrap, wire } from './madeBooks.ts'

type House = 'a' | 'b'
type Turned = { readonly household: House; readonly to: 'money' | 'hours'; readonly item: string }

const figures = (notebook: ReturnType<typeof notebookWith>) => {
  const statement = statementOf(notebook)
  if (!statement.ok) throw new Error(JSON.stringify(statement.faults))
  return { still: stillInMoney(notebook, statement.value), balance: statement.value.balance }
}
const works = (household: House, hours: number, task: string, item = 's1') => ({
  household,
  kind: 'hours',
  hours: String(hours),
  rate: '25.00',
  date: on,
  for: item,
  task,
})
const turn = (of: Turned, hours: number) => ({
  ...of,
  hours: String(hours),
  rate: '25.00',
  on,
  marks: markedBy('a', 'b'),
})
const marked = (line: object, amount: string) => ({ ...line, amount, marks: markedBy('a', 'b') })

// 250.00 in halves, 125.00 each. b gives 4 h for 100.00 of its money: 25.00 in money is left to it.
describe('hours in the place of money, worked by hand', () => {
  const still = (contributions: readonly object[], books: object = {}) =>
    figures(
      notebookOf(contributions, {
        conversions: [turn({ household: 'b', to: 'hours', item: 's1' }, 4)],
        ...books,
      }),
    ).still.b

  test('b is still to bring 25.00, before it works its 4 h and after', () => {
    expect(still([])).toBe(2500n)
    expect(still([works('b', 4, 'dig')])).toBe(2500n)
    expect(still([works('b', 4, '')])).toBe(2500n)
    expect(still([works('b', 1, 'dig'), works('b', 2, '')])).toBe(2500n)
  })

  test('a fifth hour is beyond them: it is still to bring nothing', () => {
    expect(still([works('b', 5, 'dig')])).toBe(0n)
  })

  test('every line marked, the digging at 100.00 and the rest at nothing: 50.00 asked, 100.00 given', () => {
    const bought = [marked(digging, '100.00'), ...[wire, pipe, scrap].map((line) => marked(line, '0.00'))]
    expect(still([works('b', 4, 'dig')], { bought })).toBe(-5000n)
    // Of the 4 h it worked one: none of the others is to come any more.
    expect(still([works('b', 1, 'dig')], { bought })).toBe(2500n)
  })
})

// a is to give the pipe, 60.00, and 4 h, 100.00, of 125.00. It gives 2 h in money: 125.00 − 60.00 − 50.00.
describe('money in the place of hours, worked by hand', () => {
  const still = (contributions: readonly object[], books: object = {}) =>
    figures(
      notebookOf(contributions, {
        conversions: [turn({ household: 'a', to: 'money', item: 's1' }, 2)],
        ...books,
      }),
    ).still.a

  test('a is still to bring 15.00, before it works the other 2 h and after', () => {
    expect(still([])).toBe(1500n)
    expect(still([works('a', 2, 'dig')])).toBe(1500n)
  })

  test('once both mark the digging at the 2 h, the pipe is still to come: 100.00 − 60.00 − 50.00', () => {
    expect(still([works('a', 2, 'dig')], { bought: [marked(digging, '50.00')] })).toBe(-1000n)
  })

  test('all 4 h worked after all, they leave the pipe to come: 125.00 − 100.00 − 60.00', () => {
    expect(still([works('a', 4, 'dig')])).toBe(-3500n)
  })
})

// Each household has one labour line of each section, so that "its own task" is one.
const plan = { s1: { a: 4, b: 3 }, s2: { a: 1, b: 2 } } as const
const items = ['s1', 's2'] as const
const tasks = { a: 'dig', b: 'fill' } as const
const documentWith = (
  contributions: readonly object[],
  conversions: readonly object[],
  bought: object[] = [],
) => ({
  sections: items.map((id) => ({
    id,
    name: id,
    materials: [
      { what: 'wire', quantity: '4', unitPrice: '25.00', suppliedBy: 'bought' },
      { what: 'pipe', quantity: '6', unitPrice: '10.00', suppliedBy: 'a' },
    ],
    labour: (['a', 'b'] as const).map((by) => ({
      task: tasks[by],
      hours: String(plan[id][by]),
      rate: '25.00',
      by,
    })),
    share: halves,
  })),
  contributions,
  books: { conversions, bought },
})

const house = fc.constantFrom<House>('a', 'b')
const turns = fc.array(
  fc
    .record({
      household: house,
      to: fc.constantFrom<Turned['to']>('money', 'hours'),
      item: fc.constantFrom(...items),
    })
    .chain((of) => fc.integer({ min: 1, max: 4 }).map((hours) => ({ ...of, hours }))),
  { maxLength: 4 },
)
const worked = fc.array(
  fc.record({
    household: house,
    item: fc.constantFrom(...items),
    on: fc.constantFrom('own', 'other', 'none'),
  }),
  { maxLength: 12 },
)
type Worked = { readonly household: House; readonly item: 's1' | 's2'; readonly on: string }

/** Hours that a household gives on an item in the place of money, less those that it gives money for. */
const netHours = (
  turned: readonly (Turned & { readonly hours: number })[],
  household: House,
  item: string,
): number =>
  turned
    .filter((one) => one.household === household && one.item === item)
    .reduce((sum, { to, hours }) => sum + (to === 'hours' ? hours : -hours), 0)

const entriesOf = (each: readonly Worked[]) =>
  each.map(({ household, item, on: where }) =>
    works(
      household,
      1,
      where === 'none' ? '' : tasks[(where === 'own') === (household === 'a') ? 'a' : 'b'],
      item,
    ),
  )

describe('what is still to bring in money, with hours turned into money and money into hours', () => {
  test('is not moved by hours that were planned or turned, on whatever task they are worked', () => {
    fc.assert(
      fc.property(turns, worked, (turned, all) => {
        // As many hours as are expected, and no more on the other's task than are given in the place of money.
        const given: Worked[] = []
        for (const one of all) {
          const before = given.filter(
            ({ household, item }) => household === one.household && item === one.item,
          )
          const more = netHours(turned, one.household, one.item)
          const onOther = before.filter((each) => each.on === 'other').length
          if (before.length >= plan[one.item][one.household] + more) continue
          if (one.on !== 'other' || onOther < more) given.push(one)
        }
        const conversions = turned.map(({ hours, ...of }) => turn(of, hours))
        const before = figures(notebookWith(documentWith([], conversions))).still
        expect(figures(notebookWith(documentWith(entriesOf(given), conversions))).still).toEqual(before)
      }),
    )
  })

  test('is the balance once every line is marked, whatever was worked and turned', () => {
    fc.assert(
      fc.property(turns, worked, (turned, all) => {
        const conversions = turned.map(({ hours, ...of }) => turn(of, hours))
        const open = notebookWith(documentWith(entriesOf(all), conversions))
        const actuals = actualsOf(open, 2, lineFinder(open))
        const bought = plannedLines(open).map((line) =>
          marked(lineName(line), moneyText(actuals.byPath.get(line.path)?.amount ?? 0n, 2)),
        )
        const { still, balance } = figures(notebookWith(documentWith(entriesOf(all), conversions, bought)))
        expect(still).toEqual(balance)
      }),
    )
  })

  test('is the balance once all that was planned and turned is given, and nothing is marked', () => {
    fc.assert(
      fc.property(turns, fc.constantFrom('own', 'none'), (turned, where) => {
        const conversions = turned.map(({ hours, ...of }) => turn(of, hours))
        const given = items.flatMap((item) =>
          (['a', 'b'] as const).flatMap((household) => {
            const expected = plan[item][household] + netHours(turned, household, item)
            return Array.from({ length: Math.max(expected, 0) }, () => ({ household, item, on: where }))
          }),
        )
        const pipes = items.map((item) => ({
          household: 'a',
          kind: 'material',
          amount: '60.00',
          date: on,
          for: item,
          lines: [{ item, pot: 'materials', what: 'pipe', place: '2', amount: '60.00' }],
        }))
        const { still, balance } = figures(
          notebookWith(documentWith([...entriesOf(given), ...pipes], conversions)),
        )
        expect(still).toEqual(balance)
      }),
    )
  })
})
