import { isCalendarDay } from '../amounts/calendarDay.ts'
import { daysLater } from '../amounts/daysLater.ts'

/** The longest that asking again may be put off: two years, in days. */
export const longestPutOff = 731

export type AskAgainFault = 'needed' | 'no day' | 'past' | { readonly latest: string }

/** What is wrong with the day on which to ask again; undefined where it is today or at most two years from now. */
export function askAgainFault(day: string, today: string): AskAgainFault | undefined {
  if (day === '') return 'needed'
  if (!isCalendarDay(day)) return 'no day'
  if (day < today) return 'past'
  const latest = daysLater(today, longestPutOff)
  return day > latest ? { latest } : undefined
}
