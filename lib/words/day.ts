const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
]

/** A calendar day for a reader: "2027-04-30" is "30 April 2027"; an empty day stays empty. */
export function dayWords(day: string): string {
  const [year, month, date] = day.split('-')
  if (year === undefined || month === undefined || date === undefined) return day
  return `${Number(date)} ${months[Number(month) - 1]} ${year}`
}

/** A moment on a screen, in plain words for the time that papers name by its technical name. */
export function shownMoment(moment: Date): string {
  return momentWords(moment).replace('UTC', 'world time')
}

/** The same where it is held against a paper. */
export function checkedMoment(moment: Date): string {
  return momentWords(moment).replace('UTC', 'world time (UTC)')
}

/** A moment for a reader, in UTC and said so, because a record is read in other places and years. */
export function momentWords(moment: Date): string {
  const iso = moment.toISOString()
  return `${dayWords(iso.slice(0, 10))}, ${iso.slice(11, 16)} UTC`
}
