import { describe, expect, test } from 'vitest'
import { paymentPlanStanding } from '../../lib/core/ledger/paymentPlan.ts'
import { spentByItem } from '../../lib/core/ledger/spentByItem.ts'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { booksSpending } from '../../lib/words/figures/booksSpending.ts'
import { costBars } from '../../lib/words/figures/costBars.ts'
import { figureWords } from '../../lib/words/figures/figureWords.ts'
import { hoursBars } from '../../lib/words/figures/hoursBars.ts'
import { shareNames } from '../../lib/words/shareText.ts'
import { notebookWith, sectionOf } from '../core/madeNotebook.ts'

const halves = { principle: 'equal' }
const fence = (more: object = {}, prices: readonly string[] = ['100.00', '300.00']) =>
  notebookWith({
    sections: prices.map((price, at) => ({ ...sectionOf(price, halves, `s${at}`), name: `Part ${at + 1}` })),
    ...more,
  })

function barsOf(notebook: ReturnType<typeof fence>) {
  const statement = statementOf(notebook)
  if (!statement.ok) throw new Error('shared')
  return costBars(statement.value.items, spentByItem(notebook, 2), shareNames(notebook), ({ name }) => name)
}

const cash = (household: 'a' | 'b', amount: string, date: string, what = '') => ({
  household,
  kind: 'cash',
  amount,
  date,
  for: what,
})

describe('cost by item', () => {
  test('has one planned bar for each item while nothing was spent, and names the dearest', () => {
    const shown = barsOf(fence())
    expect(shown?.caption).toBe('Cost by item, as planned')
    expect(shown?.figure.groups).toEqual([
      { title: 'Part 1', bars: [{ parts: { a: 5000, b: 5000 }, text: '$100.00 planned' }] },
      { title: 'Part 2', bars: [{ parts: { a: 15000, b: 15000 }, text: '$300.00 planned' }] },
    ])
    expect(shown?.description).toBe(
      'Bars of 2 items. Planned in all: $400.00, of it $200.00 asked of no. 12 and $200.00 of no. 14. The dearest is Part 2, at $300.00. The table has every figure.',
    )
  })

  test('has what was spent below what was planned, and what was for the whole fence by itself', () => {
    const shown = barsOf(
      fence({ contributions: [cash('b', '40.00', '2027-03-01', 's1'), cash('a', '9.00', '2027-03-01')] }),
    )
    expect(shown?.figure.groups.map(({ title, bars }) => [title, bars.map(({ text }) => text)])).toEqual([
      ['Part 1', ['$100.00 planned']],
      ['Part 2', ['$300.00 planned', '$40.00 spent']],
      ['For the whole fence', ['$9.00 spent']],
    ])
    expect(shown?.description).toContain('Spent so far: $49.00, of it $9.00 by no. 12 and $40.00 by no. 14.')
  })

  test('is no figure where one bar alone would stand there, or nothing has a price', () => {
    expect(barsOf(fence({}, ['100.00']))).toBeUndefined()
    expect(barsOf(fence({}, ['0', '0']))).toBeUndefined()
  })

  test('adds up the cheaper ones of very many items', () => {
    const shown = barsOf(
      fence(
        {},
        Array.from({ length: 30 }, (_, at) => `${at + 1}.00`),
      ),
    )
    expect(shown?.figure.groups).toHaveLength(20)
    // 1 + 2 + … + 11.
    expect(shown?.figure.groups.at(-1)).toEqual({
      title: '11 more items together',
      bars: [{ parts: { a: 3300, b: 3300 }, text: '$66.00 planned' }],
    })
  })
})

describe('spending over time', () => {
  const instalments = {
    from: 'b',
    total: '90.00',
    parts: [
      { on: '2027-03-10', amount: '30.00' },
      { on: '2027-05-10', amount: '60.00' },
    ],
  }

  const spending = (notebook: ReturnType<typeof fence>) =>
    booksSpending(notebook, statementOf(notebook), '2027-04-01')

  test('is held against what was planned in all and against the payment plan', () => {
    const paid = { ...cash('b', '30.00', '2027-03-12'), kind: 'transfer' }
    const shown = spending(
      fence({
        contributions: [cash('a', '70.00', '2027-03-04'), cash('b', '20.00', '2027-03-20'), paid],
        arrangements: { instalments },
      }),
    )
    expect(shown?.figure.steps).toEqual([
      { on: '2027-03-04', parts: { a: 7000, b: 0 } },
      { on: '2027-03-20', parts: { a: 7000, b: 2000 } },
    ])
    expect(shown?.figure.against).toBe(40000)
    expect(shown?.figure.dues).toEqual([
      { on: '2027-03-10', met: true },
      { on: '2027-05-10', met: false },
    ])
    expect(shown?.description).toBe(
      'Steps from 4 March 2027 to 20 March 2027. Spent by then: $90.00, of it $70.00 by no. 12 and $20.00 by no. 14. Planned in all: $400.00. 2 instalments are planned between the two, 1 of them paid.',
    )
  })

  test('has an instalment that receipts met like one that is paid, as the payment plan has it', () => {
    // Asked for 200.00 and 150.00 given: 50.00 is to come, of 90.00 planned, so the first instalment is met.
    const notebook = fence({
      contributions: [cash('b', '150.00', '2027-03-04')],
      arrangements: { instalments },
    })
    const shown = spending(notebook)
    const plan = paymentPlanStanding(notebook, statementOf(notebook), '2027-04-01')
    expect(plan?.parts.map(({ state }) => state)).toEqual(['met', 'later'])
    expect(shown?.figure.dues.map(({ met }) => met)).toEqual([true, false])
    expect(shown?.figure.texts.met).toBe('an instalment, paid or met otherwise')
    expect(shown?.description).toContain(
      '2 instalments are planned between the two, 0 of them paid, 1 met by what was given otherwise or because less is asked for than was planned.',
    )
  })

  test('is no figure before anything was spent', () => {
    expect(spending(fence({ arrangements: { instalments } }))).toBeUndefined()
    const paid = { ...cash('b', '30.00', '2027-03-12'), kind: 'transfer' }
    expect(spending(fence({ contributions: [paid] }))).toBeUndefined()
  })
})

describe('hours by household', () => {
  const none = { asked: 0n, hired: 0n, given: 0n, turned: 0n, still: 0n, own: 0n, gifts: 0n }
  const names = { a: 'no. 12', b: 'no. 14' }

  test('has asked, given and left of each, also below nothing', () => {
    const shown = hoursBars(
      {
        a: { ...none, asked: 9_000_000n, hired: 1_000_000n, given: 10_500_000n, still: -2_500_000n },
        b: { ...none, asked: 4_000_000n, still: 4_000_000n },
      },
      names,
    )
    expect(shown?.figure.groups.map(({ bars }) => bars.map(({ text }) => text))).toEqual([
      ['9 h asked', '10.5 h given', '−2.5 h left'],
      ['4 h asked', '0 h given', '4 h left'],
    ])
    expect(shown?.figure.groups[0]?.bars.at(-1)?.parts).toEqual({ a: -2_500_000, b: 0 })
    expect(shown?.description).toContain(
      '9 h asked of no. 12, 1 h of them as hired work, which is met in money; 10.5 h given, −2.5 h left to work, or to bring in money.',
    )
  })

  test('is no figure where nobody is asked for hours', () => {
    expect(hoursBars({ a: none, b: none }, names)).toBeUndefined()
  })
})

test('the axes are told in the words of the pages', () => {
  expect(figureWords.amounts([0n, 12_000_000n], { kind: 'hours' })).toEqual(['0 h', '12 h'])
  expect((['day', 'month', 'year'] as const).map((upTo) => figureWords.day('2027-03-01', upTo))).toEqual([
    '1 March 2027',
    'March 2027',
    '2027',
  ])
})

describe('an axis of money', () => {
  const axis = (currency: string, ...places: bigint[]) =>
    figureWords.amounts(places, { kind: 'money', currency })

  test('is in whole units of the currency where all its places are whole', () => {
    expect(axis('USD', -50000n, 0n, 150000n)).toEqual(['−$500', '$0', '$1,500'])
    expect(axis('KWD', 0n, 2000n)).toEqual(['KWD\u00a00', 'KWD\u00a02'])
  })

  test('has the small units on every place where one place needs them', () => {
    expect(axis('USD', 0n, 250n, 500n)).toEqual(['$0.00', '$2.50', '$5.00'])
    expect(axis('KWD', 0n, 2500n)).toEqual(['KWD\u00a00.000', 'KWD\u00a02.500'])
  })

  test('is as everywhere in a currency without small units', () => {
    expect(axis('JPY', -500n, 0n, 1500n)).toEqual(['−¥500', '¥0', '¥1,500'])
  })
})
