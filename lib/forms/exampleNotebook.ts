import example from '../../prisma/example/notebook.json' with { type: 'json' }
import { daysLater } from '../core/amounts/daysLater.ts'
import { assert } from '../core/assert.ts'
import { isObject, type NotebookDocument, readDocument } from './readNotebook.ts'

/** The example that every install brings: a scenario of our own. It passes the same check as any import. */
export function exampleDocument(): NotebookDocument {
  const read = readDocument(example)
  assert(read.ok, 'the example that ships holds')
  return read.value.document
}

/** The day on which the story of the example begins, and that of the newest entry in its books. */
export const exampleDays = { first: '2027-02-05', newest: '2027-04-02' } as const

/** The example as if the newest entry in its books were of this day (ISO 8601): every day in it moves along. */
export function exampleUpTo(day: string): NotebookDocument {
  const moved = daysBetween(exampleDays.newest, day)
  return withDays(exampleDocument(), (one) => daysLater(one, moved)) as NotebookDocument
}

function daysBetween(from: string, to: string): number {
  return (Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / 86_400_000
}

/** Days stand alone in their field; a day inside a sentence is left as it is. */
function withDays(value: unknown, move: (day: string) => string): unknown {
  if (typeof value === 'string') return /^\d{4}-\d{2}-\d{2}$/.test(value) ? move(value) : value
  if (Array.isArray(value)) return value.map((one) => withDays(one, move))
  if (!isObject(value)) return value
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, withDays(one, move)]))
}
