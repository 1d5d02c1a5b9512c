import { createEvents, type EventAttributes } from 'ics'
import type { DatedDuty, Notebook } from '../core/agreement/notebook.ts'
import { assert } from '../core/assert.ts'
import type { InstalmentStanding } from '../core/ledger/instalmentStanding.ts'
import { instalmentEventWords } from '../words/instalmentText.ts'
import { householdName, notebookTitle } from '../words/labels.ts'
import { keeperName } from '../words/upkeepText.ts'

/** The library takes the moment at which an event was written, though its types leave it out. */
type StampedEvent = EventAttributes & { readonly timestamp: number }

/**
 * A week before, on every date, so that a call or a visit can still be arranged. In hours: of days the library makes
 * "-P7DT", which is no duration (RFC 5545, 3.3.6).
 */
const reminder = {
  action: 'display',
  trigger: { hours: 168, before: true },
  description: 'In a week',
} as const

/**
 * The dates of a notebook as a calendar file (iCalendar, RFC 5545): one event of a whole day for each date that has a
 * day and is not done, those that come round with their rule, and of the payment plan each instalment that is still to pay.
 * Same notebook, same moment, same text.
 *
 * @param about.uidOf names an event for good by what is due, so that taking the file again changes an event instead of adding one
 * @param about.madeAt stands in every event as the moment at which it was written (DTSTAMP)
 */
export function datesCalendar(
  notebook: Notebook,
  about: { readonly uidOf: (what: string, nth: number) => string; readonly madeAt: Date },
  instalments?: InstalmentStanding,
): string {
  const seen = new Map<string, number>()
  const events = notebook.dates.flatMap((date): StampedEvent[] => {
    const what = date.what.trim()
    const nth = (seen.get(what) ?? 0) + 1
    seen.set(what, nth)
    if (date.on === '' || date.done) return []
    const rule = recurrence(date)
    return [
      {
        uid: about.uidOf(what, nth),
        title: what || 'A date of the fence',
        description: [`Who sees to it: ${keeperName(notebook, date.household)}.`, date.notes.trim()]
          .filter(Boolean)
          .join('\n'),
        // The same day twice is an event of one day: then no end is written.
        start: dayNumbers(date.on),
        end: dayNumbers(date.on),
        timestamp: about.madeAt.getTime(),
        productId: 'mearing//notebook//EN',
        calName: notebookTitle(notebook),
        transp: 'TRANSPARENT',
        busyStatus: 'FREE',
        alarms: [reminder],
        ...(rule === undefined ? {} : { recurrenceRule: rule }),
      },
    ]
  })
  const { error, value } = createEvents([...events, ...instalmentEvents(notebook, about, instalments)], {
    productId: 'mearing//notebook//EN',
    calName: notebookTitle(notebook),
  })
  assert(
    !error && typeof value === 'string',
    `a notebook that was read has dates that a calendar takes: ${error}`,
  )
  return value
}

/** Named by its place in the plan, so that one whose day was moved is moved in the calendar too. */
function instalmentEvents(
  notebook: Notebook,
  about: { readonly uidOf: (what: string, nth: number) => string; readonly madeAt: Date },
  plan: InstalmentStanding | undefined,
): StampedEvent[] {
  if (plan === undefined) return []
  const names = { a: householdName(notebook, 'a'), b: householdName(notebook, 'b') }
  return plan.parts.flatMap(({ on, rest }, place) =>
    rest === 0n
      ? []
      : [
          {
            uid: about.uidOf('instalment', place + 1),
            title: instalmentEventWords(rest, names, plan.from, notebook.currency),
            start: dayNumbers(on),
            end: dayNumbers(on),
            timestamp: about.madeAt.getTime(),
            productId: 'mearing//notebook//EN',
            calName: notebookTitle(notebook),
            transp: 'TRANSPARENT',
            busyStatus: 'FREE',
            alarms: [reminder],
          },
        ],
  )
}

function dayNumbers(day: string): [number, number, number] {
  const [year = 0, month = 0, date = 0] = day.split('-').map(Number)
  return [year, month, date]
}

/**
 * How often it comes round (RFC 5545, 3.3.10). A rule leaves out months that have no such day, so that a date on the
 * 29th to 31st asks for the last of these days that the month has.
 */
function recurrence({ every, on }: DatedDuty): string | undefined {
  if (every === '') return undefined
  const [, month, date] = dayNumbers(on)
  const lastDays =
    date < 29 ? '' : `;BYMONTHDAY=${[28, 29, 30, 31].filter((day) => day <= date).join(',')};BYSETPOS=-1`
  const leapDay = month === 2 && date === 29 ? `;BYMONTH=2${lastDays}` : ''
  switch (every) {
    case 'month':
      return `FREQ=MONTHLY${lastDays}`
    case 'quarter':
      return `FREQ=MONTHLY;INTERVAL=3${lastDays}`
    case 'year':
      return `FREQ=YEARLY${leapDay}`
    case '2 years':
      return `FREQ=YEARLY;INTERVAL=2${leapDay}`
    case '5 years':
      return `FREQ=YEARLY;INTERVAL=5${leapDay}`
  }
}
