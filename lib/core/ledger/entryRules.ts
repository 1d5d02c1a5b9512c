import type { Contribution, LineOf } from '../agreement/notebook.ts'

/** Why an entry is not taken as it is. All of these refuse it but `before the notebook`, which asks. */
export type EntryObjection =
  | { readonly kind: 'after today'; readonly date: string; readonly today: string }
  | { readonly kind: 'before the notebook'; readonly date: string; readonly startedOn: string }
  | { readonly kind: 'no such line'; readonly line: number; readonly was: LineOf }
  /** The entry is for one item, and this line of another. */
  | { readonly kind: 'other item'; readonly line: number; readonly of: string; readonly for: string }

/**
 * What stands against a new entry in the book, beside what any file has to hold. Days are ISO 8601 calendar days, which
 * sort as texts. Entries that are there already are never judged again.
 *
 * @param known.isMeant whether the household said that a day before the notebook is meant
 * @param known.isPlanned whether a line is in the plan
 */
export function entryObjections(
  entry: Pick<Contribution, 'date' | 'for' | 'lines'>,
  known: {
    readonly today: string
    readonly startedOn: string
    readonly isMeant: boolean
    readonly isPlanned: (line: LineOf) => boolean
  },
): readonly EntryObjection[] {
  const { date, lines } = entry
  const { today, startedOn } = known
  const early = date < startedOn && !known.isMeant
  return [
    ...(date > today ? [{ kind: 'after today' as const, date, today }] : []),
    ...(early && date <= today ? [{ kind: 'before the notebook' as const, date, startedOn }] : []),
    ...lines.flatMap((was, line): EntryObjection[] => {
      if (!known.isPlanned(was)) return [{ kind: 'no such line', line, was }]
      return isOfOther(entry.for, was) ? [{ kind: 'other item', line, of: was.item, for: entry.for }] : []
    }),
  ]
}

/** Whether a line is of another item than the one that its entry is for. What is for the whole fence may be on any line. */
export function isOfOther(entryFor: string, line: Pick<LineOf, 'item'>): boolean {
  return entryFor !== '' && line.item !== entryFor
}

/** Whether a figure as it was typed is nought: an entry of it would say nothing. */
export function isNothing(typed: string): boolean {
  return /^(0+(\.0*)?|\.0+)$/.test(typed.trim())
}
