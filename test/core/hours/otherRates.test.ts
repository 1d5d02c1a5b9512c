import { describe, expect, test } from 'vitest'
import { hoursAtOtherRates } from '../../../lib/core/hours/otherRates.ts'
import { otherRateWords } from '../../../lib/words/otherRateText.ts'
import { halves, notebookWith } from '../madeNotebook.ts'

const on = '2027-05-03'
const worked = (more: Record<string, unknown>) => ({
  household: 'a',
  kind: 'hours',
  hours: '6',
  for: 's1',
  date: on,
  ...more,
})
const bookOf = (entry: Record<string, unknown>, rates: Record<string, unknown> | undefined = agreed) =>
  notebookWith({
    sections: [
      {
        id: 's1',
        name: 'Lane',
        labour: [
          { task: 'weld', hours: '10', rate: '30', by: 'a' },
          { task: 'weld', hours: '4', rate: '55', by: 'hired' },
        ],
        share: halves,
      },
    ],
    ...(rates === undefined ? {} : { arrangements: { rates } }),
    contributions: [worked(entry)],
  })
const agreed = { skilled: { rate: '34' }, plain: { rate: '22' } }
const sentences = (entry: Record<string, unknown>, rates?: Record<string, unknown>) => {
  const notebook = bookOf(entry, rates)
  return hoursAtOtherRates(notebook).map((one) => otherRateWords(notebook, one, 'Lane'))
}

describe('hours in the book at another rate', () => {
  test('than the agreed ones are told, with both', () => {
    expect(sentences({ rate: '28' })).toEqual([
      'No. 12, 3 May 2027, Lane: 6 h at $28.00 an hour; agreed are $34.00 for skilled and $22.00 for plain work.',
    ])
    expect(sentences({ rate: '28' }, { plain: { rate: '22' } })).toEqual([
      'No. 12, 3 May 2027, Lane: 6 h at $28.00 an hour; agreed is $22.00 for plain work.',
    ])
  })

  test('than that of their task are told with it, and the task’s own rate is none, however it is written', () => {
    expect(sentences({ task: 'weld', rate: '34' })).toEqual([
      'No. 12, 3 May 2027, Lane: 6 h at $34.00 an hour; the task “weld” is planned at $30.00.',
    ])
    expect(sentences({ task: 'weld', rate: '30.00' })).toEqual([])
  })

  test.each<[string, Record<string, unknown>, Record<string, unknown>]>([
    ['an agreed rate', { rate: '22.0' }, agreed],
    ['no rate at all', {}, agreed],
    ['a rate where none is agreed', { rate: '28' }, {}],
    ['an entry that was taken back', { rate: '28', struck: { by: 'a', on, why: 'wrong' } }, agreed],
  ])('are not told of %s', (_what, entry, rates) => {
    expect(sentences(entry, rates)).toEqual([])
  })
})
