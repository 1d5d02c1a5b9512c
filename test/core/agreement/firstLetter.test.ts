import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { askAgainFault } from '../../../lib/core/agreement/askAgainDay.ts'
import {
  answerDay,
  earliestAnswerDay,
  emptyLetter,
  letterFaults,
  noticeDays,
} from '../../../lib/core/agreement/firstLetter.ts'
import { isCalendarDay } from '../../../lib/core/amounts/calendarDay.ts'
import { daysLater } from '../../../lib/core/amounts/daysLater.ts'

const letter = (with_: Partial<typeof emptyLetter>) => ({ ...emptyLetter, ...with_ })
const kinds = (with_: Partial<typeof emptyLetter>) =>
  letterFaults(letter(with_)).map(({ path, kind }) => [path, kind])

describe('days after a day', () => {
  test.each([
    ['2027-03-01', 30, '2027-03-31'],
    ['2028-02-28', 2, '2028-03-01'],
    ['2027-02-28', 1, '2027-03-01'],
    ['2027-12-31', 1, '2028-01-01'],
    ['2027-03-01', 0, '2027-03-01'],
  ])('%s and %i is %s, as a calendar has it', (day, days, then) => {
    expect(daysLater(day, days)).toBe(then)
  })

  test('are days that exist, and more days are never an earlier day', () => {
    fc.assert(
      fc.property(
        fc.date({ min: new Date('1990-01-01'), max: new Date('2100-01-01'), noInvalidDate: true }),
        fc.nat(730),
        fc.nat(730),
        (moment, one, more) => {
          const day = moment.toISOString().slice(0, 10)
          expect(isCalendarDay(daysLater(day, one))).toBe(true)
          expect(daysLater(daysLater(day, one), more)).toBe(daysLater(day, one + more))
          expect(daysLater(day, one + more) >= daysLater(day, one)).toBe(true)
        },
      ),
    )
  })
})

describe('the day to answer by', () => {
  test('is the letter’s day and the notice, unless a later one is said', () => {
    const given = letter({ on: '2027-03-01', noticeDays: '30', saidBy: 'the clerk' })
    expect(earliestAnswerDay(given)).toBe('2027-03-31')
    expect(answerDay(given)).toBe('2027-03-31')
    expect(answerDay({ ...given, answerBy: '2027-04-15' })).toBe('2027-04-15')
    expect(answerDay(letter({ answerBy: '2027-04-15' }))).toBe('2027-04-15')
    expect(answerDay(letter({ on: '2027-03-01' }))).toBeUndefined()
  })

  test('is refused before the notice is over, and the first right day is named', () => {
    const early = letter({ on: '2027-03-01', noticeDays: '30', saidBy: 'the clerk', answerBy: '2027-03-30' })
    expect(letterFaults(early)).toEqual([
      { path: 'letter.answerBy', kind: 'too soon', earliest: '2027-03-31' },
    ])
    expect(letterFaults({ ...early, answerBy: '2027-03-31' })).toEqual([])
    expect(kinds({ on: '2027-03-01', answerBy: '2027-02-28' })).toEqual([['letter.answerBy', 'too soon']])
    expect(kinds({ answerBy: '2027-02-28' })).toEqual([])
  })
})

describe('a notice', () => {
  test.each(['0', '1', '30', '730'])('of %s days is one', (typed) => {
    expect(noticeDays(letter({ noticeDays: typed }))).toBe(Number(typed))
    expect(kinds({ noticeDays: typed, saidBy: 'the clerk' })).toEqual([])
  })

  test.each(['1.5', '731', '9999', '0.5'])('of %s days is refused at its field', (typed) => {
    expect(kinds({ noticeDays: typed, saidBy: 'the clerk' })).toEqual([
      ['letter.noticeDays', 'no whole days'],
    ])
  })

  test('that nobody said is refused at the field for who said so', () => {
    expect(kinds({ noticeDays: '30', saidBy: '  ' })).toEqual([['letter.saidBy', 'who said so']])
  })
})

test('work that ends before it begins is refused', () => {
  expect(kinds({ workFrom: '2027-05-02', workTo: '2027-05-01' })).toEqual([
    ['letter.workTo', 'ends before it begins'],
  ])
  expect(kinds({ workFrom: '2027-05-02', workTo: '2027-05-02' })).toEqual([])
  expect(kinds({ workTo: '2027-05-02' })).toEqual([])
})

describe('a day on which to ask again', () => {
  test.each([
    ['', 'needed'],
    ['soon', 'no day'],
    ['2027-02-30', 'no day'],
    ['2027-02-28', 'past'],
    ['2029-03-02', { latest: '2029-03-01' }],
  ] as const)('is refused as %j', (day, fault) => {
    expect(askAgainFault(day, '2027-03-01')).toEqual(fault)
  })

  test.each(['2027-03-01', '2027-03-02', '2029-03-01'])('may be %s', (day) => {
    expect(askAgainFault(day, '2027-03-01')).toBeUndefined()
  })
})
