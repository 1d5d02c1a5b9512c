import { describe, expect, test } from 'vitest'
import { checkedMoment, dayWords, momentWords, shownMoment } from '../../lib/words/day.ts'

describe('a day for a reader', () => {
  test.each([
    ['2027-04-30', '30 April 2027'],
    ['2027-01-01', '1 January 2027'],
    ['2028-02-29', '29 February 2028'],
    ['2027-12-09', '9 December 2027'],
    ['', ''],
  ])('%j is %j', (day, words) => {
    expect(dayWords(day)).toBe(words)
  })

  test('names every month', () => {
    const months = Array.from({ length: 12 }, (_, index) =>
      dayWords(`2027-${String(index + 1).padStart(2, '0')}-05`),
    )
    const named = new Intl.DateTimeFormat('en-GB', {
      day: 'numeric',
      month: 'long',
      year: 'numeric',
      timeZone: 'UTC',
    })
    expect(months).toEqual(months.map((_, index) => named.format(Date.UTC(2027, index, 5))))
  })
})

test('a moment on a screen is told in plain words, with the technical one where a paper is checked', () => {
  const moment = new Date('2027-03-03T19:12:59+02:00')
  expect(shownMoment(moment)).toBe('3 March 2027, 17:12 world time')
  expect(checkedMoment(moment)).toBe('3 March 2027, 17:12 world time (UTC)')
})

test('a moment is told in UTC, and says so', () => {
  expect(momentWords(new Date('2027-03-03T19:12:59+02:00'))).toBe('3 March 2027, 17:12 UTC')
  expect(momentWords(new Date('2027-01-01T00:30:00+01:00'))).toBe('31 December 2026, 23:30 UTC')
})
