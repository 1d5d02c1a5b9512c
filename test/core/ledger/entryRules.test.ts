import { describe, expect, test } from 'vitest'
import { entryObjections, isNothing } from '../../../lib/core/ledger/entryRules.ts'

const line = { item: 's1', pot: 'materials', what: 'wire', place: '1', quantity: '', amount: '1.00' } as const
const known = { today: '2027-04-10', startedOn: '2027-03-01', isMeant: false, isPlanned: () => true }
const kindsOf = (date: string, more: object = {}) =>
  entryObjections({ date, for: '', lines: [line] }, { ...known, ...more }).map(({ kind }) => kind)

describe('a new entry in the book', () => {
  test.each(['2027-03-01', '2027-04-10'])(
    'is taken on the first and the last day that can be: %s',
    (date) => {
      expect(kindsOf(date)).toEqual([])
    },
  )

  test('is refused on a day that is yet to come, whatever is ticked', () => {
    expect(kindsOf('2027-04-11')).toEqual(['after today'])
    expect(kindsOf('2027-04-11', { isMeant: true })).toEqual(['after today'])
  })

  test('is asked about on a day before the notebook, and taken once that is meant', () => {
    expect(kindsOf('2027-02-28')).toEqual(['before the notebook'])
    expect(kindsOf('2027-02-28', { isMeant: true })).toEqual([])
  })

  test('is refused for each line that is not in the plan, by its place', () => {
    const isPlanned = () => false
    expect(
      entryObjections({ date: '2027-04-01', for: '', lines: [line, line] }, { ...known, isPlanned }),
    ).toEqual([
      { kind: 'no such line', line: 0, was: line },
      { kind: 'no such line', line: 1, was: line },
    ])
  })

  test('for one item is refused for each line of another, and for the whole fence for none', () => {
    const other = { ...line, item: 's2' }
    const entry = { date: '2027-04-01', lines: [line, other] }
    expect(entryObjections({ ...entry, for: 's1' }, known)).toEqual([
      { kind: 'other item', line: 1, of: 's2', for: 's1' },
    ])
    expect(entryObjections({ ...entry, for: '' }, known)).toEqual([])
  })
})

test('a figure is nothing however its noughts are typed, and the smallest amount is something', () => {
  for (const typed of ['0', '00', '0.00', '0.', ' 0 ']) expect(isNothing(typed)).toBe(true)
  for (const typed of ['0.01', '10', '100.00', '', 'nothing']) expect(isNothing(typed)).toBe(false)
})
