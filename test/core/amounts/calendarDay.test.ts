import { describe, expect, test } from 'vitest'
import { isCalendarDay } from '../../../lib/core/amounts/calendarDay.ts'

describe('a day of the calendar is taken', () => {
  test.each(['2027-04-30', '2028-02-29', '2000-02-29', '2027-12-31', '0001-01-01'])('%s', (day) => {
    expect(isCalendarDay(day)).toBe(true)
  })
})

describe('a day that is none is refused', () => {
  test.each([
    '2027-02-29',
    '2027-02-30',
    '1900-02-29',
    '2027-04-31',
    '2027-00-10',
    '2027-13-01',
    '2027-01-00',
    '2027-01-32',
    '2027-1-1',
    '27-01-01',
    '20270101',
    '2027-01-01T00:00',
    '30.04.2027',
    '2027-01-01\n',
    '',
  ])('%j', (day) => {
    expect(isCalendarDay(day)).toBe(false)
  })
})

test('the calendar agrees with the clock of the computer over four hundred years', () => {
  for (let year = 1900; year < 2300; year += 1) {
    for (let month = 1; month <= 12; month += 1) {
      const days = new Date(Date.UTC(year, month, 0)).getUTCDate()
      const name = `${year}-${String(month).padStart(2, '0')}`
      if (!isCalendarDay(`${name}-${days}`) || isCalendarDay(`${name}-${days + 1}`))
        expect.fail(`${name} has ${days} days`)
    }
  }
})
