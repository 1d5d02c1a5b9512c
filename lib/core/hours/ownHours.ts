import type { Contribution } from '../agreement/notebook.ts'
import { plainNumber, scaledInteger } from '../amounts/typedNumber.ts'

/** Hours as a whole count of millionths: typed hours have up to six digits after the point, so sums of them are exact. */
export type ExactHours = bigint

export function exactHours(typed: string): ExactHours {
  return typed === '' ? 0n : scaledInteger(typed, 6)
}

type HoursEntry = Pick<Contribution, 'hours' | 'own'>

/** Of an entry's hours those that count: its hours less those beyond the ceiling, never below none. */
export function countedOf({ hours, own }: HoursEntry): ExactHours {
  const counted = exactHours(hours) - exactHours(own)
  return counted < 0n ? 0n : counted
}

/** The same as a number of the file. */
export function countedHours(entry: HoursEntry): string {
  return plainNumber(countedOf(entry), 6)
}

/** Whether two tasks are the same one: by their words. An empty one is none. */
export function sameTask(one: string, other: string): boolean {
  return one.trim() !== '' && one.trim() === other.trim()
}

/** What of a task's ceiling is taken up: counted hours of both households on it, entries that were taken back left out. */
export function countedSoFar(entries: readonly Contribution[], itemId: string, task: string): ExactHours {
  return entries
    .filter(
      (entry) =>
        entry.kind === 'hours' &&
        entry.struck === undefined &&
        entry.for === itemId &&
        sameTask(entry.task, task),
    )
    .reduce((sum, entry) => sum + countedOf(entry), 0n)
}

/**
 * How many hours of a new entry lie beyond the ceiling: the worker's own, worth nothing. Worked out once, when the entry
 * is made, against all that was counted for the task before; never again afterwards.
 */
export function ownHours(hours: ExactHours, ceiling: ExactHours | undefined, soFar: ExactHours): ExactHours {
  if (ceiling === undefined) return 0n
  const room = ceiling > soFar ? ceiling - soFar : 0n
  return hours > room ? hours - room : 0n
}
