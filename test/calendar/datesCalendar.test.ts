import { describe, expect, test } from 'vitest'
import { datesCalendar } from '../../lib/calendar/datesCalendar.ts'
import type { Notebook } from '../../lib/core/agreement/notebook.ts'
import { instalmentStanding } from '../../lib/core/ledger/instalmentStanding.ts'
import { exampleDocument } from '../../lib/forms/exampleNotebook.ts'
import { readNotebook } from '../../lib/forms/readNotebook.ts'
import { householdName } from '../../lib/words/labels.ts'

const madeAt = new Date('2027-03-01T10:20:30Z')

function withDates(...dates: object[]): Notebook {
  const read = readNotebook(JSON.stringify({ ...exampleDocument(), dates }))
  if (!read.ok) throw new Error('a notebook that holds')
  return read.value.notebook
}

/** Lines as they were before folding (RFC 5545, 3.1: a line break and a blank go). */
function linesOf(notebook: Notebook): string[] {
  const text = datesCalendar(notebook, { uidOf: (what, nth) => `${nth} ${what}@test`, madeAt })
  expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true)
  for (const line of text.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75)
  return text.replace(/\r\n[ \t]/g, '').split('\r\n')
}

describe('instalments in the calendar file', () => {
  const plan = {
    from: 'b' as const,
    total: '300.00',
    parts: [
      { on: '2027-05-01', amount: '100.00' },
      { on: '2027-06-01', amount: '200.00' },
    ],
  }

  test('are there until they are paid, with what is left of them, named by their place in the plan', () => {
    const paid = { index: 0, from: 'b', to: 'a', date: '2027-04-30', means: 'by bank' } as const
    const standing = instalmentStanding(plan, [{ ...paid, amount: 15_000n }], '2027-05-20', 2)
    const notebook = withDates()
    const text = datesCalendar(notebook, { uidOf: (what, nth) => `${nth} ${what}@test`, madeAt }, standing)
    const lines = text.replace(/\r\n[ \t]/g, '').split('\r\n')
    expect(lines.filter((line) => line === 'BEGIN:VEVENT')).toHaveLength(1)
    expect(lines).toContain('DTSTART;VALUE=DATE:20270601')
    expect(lines).toContain('UID:2 instalment@test')
    expect(lines.find((line) => line.startsWith('SUMMARY:'))).toBe(
      `SUMMARY:Instalment of ${householdName(notebook, 'b')} for the fence: $150.00`,
    )
  })
})

describe('the dates as a calendar file', () => {
  test('have one event of a whole day for each, with its name for good and its stamp (RFC 5545, 3.6.1)', () => {
    const lines = linesOf(withDates({ what: 'Utility marks run out', on: '2027-04-21', household: 'b' }))
    expect(lines).toContain('BEGIN:VEVENT')
    expect(lines).toContain('SUMMARY:Utility marks run out')
    expect(lines).toContain('DTSTART;VALUE=DATE:20270421')
    expect(lines.find((line) => line.startsWith('DTEND'))).toBeUndefined()
    expect(lines).toContain('DTSTAMP:20270301T102030Z')
    expect(lines).toContain('UID:1 Utility marks run out@test')
    expect(lines).toContain('TRIGGER:-PT168H')
    expect(lines.find((line) => line.startsWith('RRULE'))).toBeUndefined()
  })

  test('leave out what has no day and what is done', () => {
    const lines = linesOf(
      withDates({ what: 'Some day' }, { what: 'Done with', on: '2027-04-21', done: true }),
    )
    expect(lines).not.toContain('BEGIN:VEVENT')
  })

  test('tell two dates of one name apart, and keep their names when the day changes', () => {
    const uids = (on: string) =>
      linesOf(withDates({ what: 'Oil the hinges', on }, { what: 'Oil the hinges', on: '2027-09-01' })).filter(
        (line) => line.startsWith('UID'),
      )
    expect(uids('2027-05-01')).toEqual(['UID:1 Oil the hinges@test', 'UID:2 Oil the hinges@test'])
    expect(uids('2027-06-01')).toEqual(uids('2027-05-01'))
  })

  // RFC 5545, 3.3.10: a rule that gives a day which the month lacks leaves that month out.
  test.each([
    ['month', '2027-01-15', 'FREQ=MONTHLY'],
    ['month', '2027-01-31', 'FREQ=MONTHLY;BYMONTHDAY=28,29,30,31;BYSETPOS=-1'],
    ['quarter', '2027-01-30', 'FREQ=MONTHLY;INTERVAL=3;BYMONTHDAY=28,29,30;BYSETPOS=-1'],
    ['year', '2027-05-31', 'FREQ=YEARLY'],
    ['year', '2028-02-29', 'FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=28,29;BYSETPOS=-1'],
    ['2 years', '2027-05-01', 'FREQ=YEARLY;INTERVAL=2'],
    ['5 years', '2027-05-01', 'FREQ=YEARLY;INTERVAL=5'],
  ])('that come round every %s from %s have the rule %s', (every, on, rule) => {
    expect(linesOf(withDates({ what: 'Look it over', on, every }))).toContain(`RRULE:${rule}`)
  })

  test('keep commas, semicolons, line breaks and other scripts (RFC 5545, 3.3.11)', () => {
    const lines = linesOf(
      withDates({ what: 'Gate, latch; zażółć ⅜', on: '2027-04-21', notes: 'Ring first\nthen come' }),
    )
    expect(lines).toContain('SUMMARY:Gate\\, latch\\; zażółć ⅜')
    expect(lines.some((line) => line.startsWith('DESCRIPTION:') && line.includes('first\\nthen come'))).toBe(
      true,
    )
  })
})
