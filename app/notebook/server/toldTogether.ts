import type { Change } from '../../../lib/store/changes.ts'

/** Entries of the history that are told in one line: the newest, and how many more of its kind came just before it. */
export type Told = { readonly newest: Change; readonly more: readonly Change[] }

/** Kinds that come in numbers: a whole page of receipts, every item marked in one evening. */
const inNumbers: readonly string[] = ['books', 'mark', 'unmark', 'file']
const few = 2

/**
 * Puts entries that follow one another and are of one kind that comes in numbers into one line, where there are more than
 * two; everything else is told by itself.
 */
export function toldTogether(newestFirst: readonly Change[]): readonly Told[] {
  const runs: Change[][] = []
  for (const change of newestFirst) {
    const run = runs.at(-1)
    const same = run?.[0]?.kind === change.kind && inNumbers.includes(change.kind)
    if (run !== undefined && same) run.push(change)
    else runs.push([change])
  }
  return runs.flatMap((run) => {
    const [newest, ...more] = run
    if (newest === undefined) return []
    return run.length > few ? [{ newest, more }] : run.map((one) => ({ newest: one, more: [] }))
  })
}
