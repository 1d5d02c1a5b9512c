import type { Household } from '../../../lib/core/people/household.ts'
import { type Change, changesOf, latestChanges } from '../../../lib/store/changes.ts'

/** For how long an edit can be taken back by a press, in milliseconds: a day. */
const offered = 86_400_000

/**
 * The edits that this household can take back, by their number, each with its changes, newest first: it made the edit within
 * a day, and nothing that the edit changed has been changed since.
 */
export async function undoableEdits(
  notebookId: string,
  household: Household,
  now: Date,
): Promise<ReadonlyMap<number, readonly Change[]>> {
  const all = await changesOf(notebookId)
  const ids = await undoableIds(notebookId, household, now, all)
  const edits = new Map<number, Change[]>()
  for (const change of all) edits.set(change.edit, [...(edits.get(change.edit) ?? []), change])
  return new Map([...edits].filter(([, changes]) => changes.every(({ id }) => ids.has(id))))
}

/** Changes of this household that are young enough, and the newest of their item. */
async function undoableIds(
  notebookId: string,
  household: Household,
  now: Date,
  all: readonly Change[],
): Promise<ReadonlySet<number>> {
  const newest = new Set((await latestChanges(notebookId)).map(({ id }) => id))
  // A key that another item has taken over since is changed by that, too.
  const given = new Set(all.flatMap(({ previousKey }) => previousKey ?? []))
  const since = now.getTime() - offered
  return new Set(
    all
      .filter((change) => change.household === household && change.at.getTime() > since)
      .filter((change) => newest.has(change.id) && !given.has(change.itemKey))
      .map(({ id }) => id),
  )
}
