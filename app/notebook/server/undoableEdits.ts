import type { Household } from '../../../lib/core/people/household.ts'
import { editUndone } from '../../../lib/forms/editUndone.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { type Change, changesOf, latestChanges } from '../../../lib/store/changes.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'

/** For how long an edit can be taken back by a press, in milliseconds: a day. */
const offered = 86_400_000

type Edits = ReadonlyMap<number, readonly Change[]>

/** The edits that this household can take back, as `ownEdits`, and that would change anything. */
export async function undoableEdits(notebookId: string, household: Household, now: Date): Promise<Edits> {
  const edits = await ownEdits(notebookId, household, now)
  const stored = edits.size === 0 ? undefined : await findNotebook(notebookId)
  if (stored === undefined) return new Map()
  const document = JSON.parse(stored.document) as NotebookDocument
  return new Map([...edits].filter(([, changes]) => 'next' in editUndone(document, changes)))
}

/**
 * The edits of this household by their number, each with its changes, newest first: it made the edit within a day, and
 * nothing that the edit changed has been changed since.
 */
export async function ownEdits(notebookId: string, household: Household, now: Date): Promise<Edits> {
  const all = await changesOf(notebookId)
  const ids = await undoableIds(notebookId, household, now, all)
  const edits = new Map<number, Change[]>()
  for (const change of all) edits.set(change.edit, [...(edits.get(change.edit) ?? []), change])
  const otherMoneySince = all.find(isOtherCurrency)?.edit ?? 0
  return new Map(
    [...edits].filter(
      ([edit, changes]) =>
        changes.every(({ id }) => ids.has(id)) && (edit >= otherMoneySince || !changes.some(isOfBooks)),
    ),
  )
}

/** Figures of the books are on record without the currency that they were written in. */
function isOfBooks({ itemKey }: Change): boolean {
  return itemKey === 'contributions' || itemKey === 'books'
}

function isOtherCurrency({ itemKey, before, after }: Change): boolean {
  const currency = (heading: unknown) => (heading as { readonly currency?: unknown } | null)?.currency
  return itemKey === 'heading' && currency(before) !== currency(after)
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
