import { inFormatOrder } from './parts.ts'
import { isObject, type NotebookDocument } from './readNotebook.ts'

/**
 * The document with, among its dates, the day on which the first household asks the second again; without a day, with
 * that date done. A date of the same words that is not done yet is moved, so that there is never more than one.
 *
 * @param what the words of the date
 */
export function askAgain(
  document: NotebookDocument,
  what: string,
  until: string | undefined,
): NotebookDocument {
  const dates = Array.isArray(document.dates) ? document.dates : []
  const waits = (date: unknown) => isObject(date) && date.what === what && date.done !== true
  const index = dates.findIndex(waits)
  if (until === undefined) {
    if (index < 0) return document
    return { ...document, dates: dates.map((date) => (waits(date) ? { ...date, done: true } : date)) }
  }
  const next =
    index < 0
      ? [...dates, { what, on: until, household: 'a' }]
      : dates.with(index, { ...dates[index], on: until })
  return inFormatOrder({ ...document, dates: next })
}
