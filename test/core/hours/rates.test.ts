import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { plainNumber, scaledInteger } from '../../../lib/core/amounts/typedNumber.ts'
import { countsAlready, turnedMoney, waitsFor } from '../../../lib/core/hours/conversions.ts'
import { againstQuote, departsFrom } from '../../../lib/core/hours/rates.ts'
import { comparedWords, quoteWords } from '../../../lib/words/arrangementText.ts'
import { notebookWith } from '../madeNotebook.ts'

describe('a rate held against a local quote', () => {
  test.each([
    ['34', '40', '15 percent below the quote'],
    ['46', '40', '15 percent above the quote'],
    ['40.00', '40', 'the same as the quote'],
    ['34', '46.50', 'about 26.9 percent below the quote'],
    ['40.000001', '40', 'less than 0.1 percent above the quote'],
    ['0', '40', '100 percent below the quote'],
    ['34', '', undefined],
    ['', '40', undefined],
    ['34', '0', undefined],
  ])('%s against %s is %s', (rate, quote, words) => {
    expect(comparedWords({ rate, quote })).toBe(words)
  })

  test('is compared exactly: the quote and that many percent of it are the rate', () => {
    const figure = fc.integer({ min: 1, max: 900_000_000 }).map((one) => plainNumber(BigInt(one), 6))
    fc.assert(
      fc.property(figure, figure, (rate, quote) => {
        const above = againstQuote({ rate, quote })
        if (above === undefined) throw new Error('both are there')
        const [own, local] = [scaledInteger(rate, 6), scaledInteger(quote, 6)]
        expect(local * (100n * above.under + above.over)).toBe(own * 100n * above.under)
      }),
    )
  })

  test('says where the quote comes from, and when', () => {
    const rate = { rate: '34', quote: '40', quoteFrom: 'a shop, by phone', on: '2027-01-20' }
    expect(quoteWords(rate, 'USD')).toBe('$40.00, from a shop, by phone, 20 January 2027')
    expect(quoteWords({ ...rate, quoteFrom: '', on: '' }, 'USD')).toBe('$40.00, from nobody that is named')
    expect(quoteWords({ ...rate, quote: '' }, 'USD')).toBe('no local quote was entered')
  })
})

describe('a line’s rate beside the agreed one', () => {
  const arrangements = {
    tolerance: '',
    rates: { skilled: { rate: '34', quote: '', quoteFrom: '', on: '' } },
    notes: '',
  }
  test.each<[string, '' | 'skilled' | 'plain', string | undefined]>([
    ['34.00', 'skilled', undefined],
    ['30', 'skilled', '34'],
    ['', 'skilled', undefined],
    ['30', 'plain', undefined],
    ['30', '', undefined],
  ])('%s for %s work departs from %s', (rate, skill, agreed) => {
    expect(departsFrom({ rate, skill }, arrangements)).toBe(agreed)
  })
})

describe('hours turned into money', () => {
  const date = '2027-04-03'
  const both = { a: { on: date }, b: { on: date } }
  const { books } = notebookWith({
    sections: [{ id: 's1', share: { together: { principle: 'equal' } } }],
    books: {
      conversions: [
        { household: 'b', to: 'money', item: 's1', hours: '1.5', rate: '20.01', on: date, marks: both },
        { household: 'a', to: 'hours', item: 's1', hours: '2', rate: '20', on: date, marks: both },
        {
          household: 'b',
          to: 'money',
          item: 's1',
          hours: '9',
          rate: '20',
          on: date,
          marks: { b: { on: date } },
        },
      ],
    },
  })

  test('count once both have marked them: what each brings in money changes by hours × rate, rounded once', () => {
    // 1.5 × 20.01 = 30.015, rounded half up to 30.02; 2 × 20 = 40.00 less for a.
    expect(turnedMoney(books.conversions, 2)).toEqual({ a: -4000n, b: 3002n })
    expect(books.conversions.map(countsAlready)).toEqual([true, true, false])
  })

  test('wait for the other household', () => {
    expect(books.conversions.map(waitsFor)).toEqual([undefined, undefined, 'a'])
  })
})
