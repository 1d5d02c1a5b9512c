/** The calendar day that lies so many whole days after another, both in ISO 8601: 2028-02-28 and 2 is 2028-03-01. */
export function daysLater(day: string, days: number): string {
  const moment = new Date(`${day}T00:00:00Z`)
  moment.setUTCDate(moment.getUTCDate() + days)
  return moment.toISOString().slice(0, -'T00:00:00.000Z'.length)
}
