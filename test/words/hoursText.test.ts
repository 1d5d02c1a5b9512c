import { describe, expect, test } from 'vitest'
import { exactHours } from '../../lib/core/hours/ownHours.ts'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { departsWords, ratesAlone, toleranceWords, totalQuestion } from '../../lib/words/arrangementText.ts'
import { differences, differenceWords } from '../../lib/words/differences.ts'
import { happeningWords } from '../../lib/words/happeningText.ts'
import { entryHoursWords, hoursFigure, hoursWords, rateHint } from '../../lib/words/hoursText.ts'
import { changedItemTitle } from '../../lib/words/itemWords.ts'
import type { Block } from '../../lib/words/summary/block.ts'
import { contentWithoutCosts } from '../../lib/words/summary/contentWithoutCosts.ts'
import { summaryContent } from '../../lib/words/summary/summaryContent.ts'
import { halves, notebookWith } from '../core/madeNotebook.ts'

describe('hours in words', () => {
  test.each([
    ['0', '0.00', '0 h'],
    ['7.5', '7.50', '7.5 h'],
    ['0.333', '0.333', '0.333 h'],
    ['12', '12.00', '12 h'],
  ])('%s', (typed, figure, words) => {
    expect(hoursFigure(exactHours(typed))).toBe(figure)
    expect(hoursWords(exactHours(typed))).toBe(words)
  })

  test('hours below zero, given beyond what was asked, have a minus', () => {
    expect(hoursFigure(-exactHours('3'))).toBe('−3.00')
    expect(hoursWords(-exactHours('0.5'))).toBe('−0.5 h')
  })

  test('an entry says which of its hours are the worker’s own', () => {
    expect(entryHoursWords({ hours: '6', rate: '28', own: '' }, 'USD')).toBe('6 h at $28.00 an hour')
    expect(entryHoursWords({ hours: '6', rate: '', own: '2.5' }, 'USD')).toBe(
      '6 h at no rate, 2.5 h of them the worker’s own, beyond the ceiling',
    )
  })
})

describe('arrangements in words', () => {
  const rates = ratesAlone({ skilled: '34', plain: '' })

  test('a rate that is not the agreed one says so, and no other', () => {
    expect(departsWords({ skill: 'skilled', rate: '30' }, rates, 'USD')).toBe(
      'not the agreed $34.00 for skilled work',
    )
    expect(departsWords({ skill: 'skilled', rate: '34.0' }, rates, 'USD')).toBeUndefined()
    expect(departsWords({ skill: 'plain', rate: '30' }, rates, 'USD')).toBeUndefined()
    expect(departsWords({ skill: 'skilled', rate: '30' }, undefined, 'USD')).toBeUndefined()
  })

  test('a tolerance says what happens beyond it', () => {
    expect(toleranceWords('10')).toContain('up to 10 percent dearer')
    expect(toleranceWords('')).toBe('No tolerance is agreed.')
  })

  test('a total that the plan does not ask for is told with the difference', () => {
    const notebook = notebookWith()
    expect(totalQuestion(notebook, 'b', 32500n, 10000n)).toMatch(
      /^As planned, no. 14 brings \$325.00 in money, \$225.00 more than this total of \$100.00\./,
    )
    expect(totalQuestion(notebook, 'a', -500n, 10000n)).toMatch(
      /^As planned, no. 12 brings nothing in money: it is due to get \$5.00 back, \$105.00 less than/,
    )
  })

  test('what changed in them names the rate, the quote and the instalment', () => {
    const was = {
      currency: 'USD',
      arrangements: {
        tolerance: '10',
        rates: { skilled: { rate: '34', on: '2027-01-20' } },
        instalments: { from: 'a', total: '10.00', parts: [{ on: '2027-05-01', amount: '10.00' }] },
      },
    }
    const is = {
      currency: 'USD',
      arrangements: {
        tolerance: '15',
        rates: { skilled: { rate: '36', on: '2027-02-20', quoteFrom: 'a shop' } },
        instalments: { from: 'b', total: '20.00', parts: [{ on: '2027-06-01', amount: '20.00' }] },
      },
    }
    expect(differences(was, is).map(differenceWords)).toEqual([
      'Tolerance, percent: 10 before, 15 now',
      'Agreed rates, skilled work, rate: $34.00 an hour before, $36.00 an hour now',
      'Agreed rates, skilled work, quote dated: 20 January 2027 before, 20 February 2027 now',
      'Instalments, paid by: household a before, household b now',
      'Instalments, in all: $10.00 before, $20.00 now',
      'Instalments, instalment 1, day: 1 May 2027 before, 1 June 2027 now',
      'Instalments, instalment 1, amount: $10.00 before, $20.00 now',
      'Agreed rates, skilled work, quote from: now a shop',
    ])
    expect(changedItemTitle({ itemKey: 'arrangements', before: was, after: null }, [])).toBe(
      'Money and hours agreed (removed)',
    )
  })
})

test('the history tells each step of turning hours into money, with its figures', () => {
  const told = (step: string, to: string) =>
    happeningWords(
      {
        kind: 'books',
        itemKey: 'item:s1',
        before: null,
        after: null,
        detail: { books: 'conversion', step, to, hours: '2.5', rate: '22' },
      },
      'Lane end',
    )
  expect(told('asked', 'money')).toBe('Asked to give money in the place of 2.5 h on Lane end, at 22 an hour.')
  expect(told('agreed', 'money')).toBe(
    'Agreed that the other household gives money in the place of 2.5 h on Lane end, at 22 an hour.',
  )
  expect(told('withdrawn', 'hours')).toBe(
    'Took back that it gives 2.5 h of work in the place of money on Lane end, at 22 an hour.',
  )
})

describe('the summary', () => {
  const date = '2027-04-03'
  const marks = { a: { on: date }, b: { on: date } }
  const notebook = notebookWith({
    sections: [
      {
        id: 's1',
        name: 'Lane end',
        labour: [
          { task: 'dig', hours: '8', rate: '20', by: 'a', skill: 'plain', ceiling: '6' },
          { task: 'paint the rails', hours: '5', by: 'b', counts: false },
        ],
        share: halves,
      },
    ],
    arrangements: {
      tolerance: '10',
      rates: { plain: { rate: '20', quote: '25', quoteFrom: 'a builder', on: '2027-01-20' } },
      instalments: { from: 'b', total: '80.00', parts: [{ on: '2027-05-01', amount: '80.00' }] },
      notes: 'Weekly.',
    },
    contributions: [
      { household: 'a', kind: 'hours', hours: '8', rate: '20', date, for: 's1', task: 'dig', own: '2' },
    ],
    books: {
      conversions: [{ household: 'b', to: 'money', item: 's1', hours: '4', rate: '20', on: date, marks }],
    },
  })
  const standing = { kind: 'draft', sha256: '0'.repeat(64) } as const
  const whole = summaryContent({ notebook, statement: statementOf(notebook), standing, signatures: [] })
  const textOf = (blocks: readonly Block[]) => JSON.stringify(blocks).replaceAll('\u00A0', ' ')

  test('holds rates with their quote and source, the tolerance and the instalments', () => {
    const text = textOf(whole)
    for (const said of [
      '"Plain work","$20.00","$25.00, from a builder, 20 January 2027","20 percent below the quote"',
      'up to 10 percent dearer than planned before both households look at it again. Weekly.',
      'No. 14 pays in instalments',
      '"1 May 2027","$80.00"',
      'dig, plain work, at most 6 hours count',
    ])
      expect(text).toContain(said)
  })

  test('thanks for gifts by the household’s name, and tells hours given, own and turned', () => {
    const text = textOf(whole)
    expect(text).toContain('No. 14 gives 5 h for this: paint the rails. Thank you.')
    expect(text).toContain('"No. 12","4.00","0.00","6.00","−2.00","2.00","0.00"')
    expect(text).toContain('"No. 14","4.00","0.00","0.00","0.00","0.00","0.00"')
    expect(text).toContain(
      'No. 14 gives $80.00 in the place of 4 h on Section 1: Lane end, at $20.00 an hour. Both agreed to it.',
    )
    expect(text).toContain('2 h of them beyond what was agreed')
    expect(text).toMatch(/"title":"Beyond the ceiling","figure":true\},\{"title":"Gifts"/)
    expect(text).toContain('It pays money for those that it does not work.')
  })

  test('says nothing of rates, tolerance, instalments or hours to strangers', () => {
    const text = textOf(contentWithoutCosts({ notebook, standing, signatures: [] }))
    expect(text).not.toMatch(/arrangements|instalment|tolerance|dearer|an hour|hours-given|builder/i)
  })
})

describe('beside the rate of hours', () => {
  const agreed = { plain: '22', skilled: '34' }
  test.each<[Parameters<typeof rateHint>[0], Parameters<typeof rateHint>[2], string]>([
    [agreed, { rate: '25.00' }, 'The task is planned at $25.00 an hour.'],
    [
      agreed,
      { rate: '' },
      'The task has no rate in the plan. Without a rate the hours are worth nothing in money.',
    ],
    [agreed, undefined, 'Agreed: $22.00 an hour for plain work, $34.00 for skilled work.'],
    [{ plain: '22', skilled: '' }, undefined, 'Agreed: $22.00 an hour for plain work.'],
    [undefined, undefined, 'No rate is agreed on. Without a rate the hours are worth nothing in money.'],
  ])('it says where the rate comes from: %o, %o', (rates, task, words) => {
    expect(rateHint(rates, 'USD', task)).toBe(words)
  })
})
