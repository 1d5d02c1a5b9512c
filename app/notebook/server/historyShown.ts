import { agreedItems } from '../../../lib/core/agreement/agreedItems.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { changesOf } from '../../../lib/store/changes.ts'
import {
  type HistoryEntry,
  type HistoryHead,
  headOf,
  historyOf,
  leadsThrough,
} from '../../../lib/store/historyChain.ts'
import { sealsOf } from '../../../lib/store/sealedPapers.ts'
import { historyGroups, historyTitles } from '../../../lib/words/happeningText.ts'
import type { HistoryAsked } from './historyAsked.ts'
import { itemTitles } from './itemTitles.ts'
import type { FrozenRevision } from './standingRevision.ts'

/** Entries on one page. */
const onOnePage = 100

/** A locked copy, and whether the history still leads through the entry that it prints. */
export type LockedHead = { readonly revision: number; readonly head: HistoryHead; readonly leads: boolean }

/** As much of a history as one page shows. */
export type HistoryShown = {
  readonly asked: HistoryAsked
  /** Newest first. */
  readonly entries: readonly HistoryEntry[]
  /** How many entries fit what was asked for, and on how many pages. */
  readonly found: number
  readonly pages: number
  readonly head: HistoryHead
  readonly locked: readonly LockedHead[]
  /** What every item that the history names is called. */
  readonly titles: ReadonlyMap<string, string>
  /** What an item is called by its id, whether or not anything happened to it. */
  readonly titleOf: (id: string) => string
}

export async function historyShown(
  notebookId: string,
  document: NotebookDocument,
  revisions: readonly FrozenRevision[],
  asked: HistoryAsked,
): Promise<HistoryShown> {
  const history = await historyOf(notebookId)
  const found = (await narrowed(notebookId, history, asked)).reverse()
  const pages = Math.max(1, Math.ceil(found.length / onOnePage))
  const page = Math.min(asked.page, pages)
  return {
    asked: { ...asked, page },
    entries: found.slice((page - 1) * onOnePage, page * onOnePage),
    found: found.length,
    pages,
    head: headOf(history),
    locked: await lockedHeads(notebookId, history, revisions),
    titles: historyTitles(history, agreedItems(document)),
    titleOf: itemTitles(document),
  }
}

/** The entries that fit, oldest first. The history of an item goes on under the keys that it had before. */
async function narrowed(
  notebookId: string,
  history: readonly HistoryEntry[],
  { item, group }: HistoryAsked,
): Promise<HistoryEntry[]> {
  const ofItem =
    item === undefined
      ? undefined
      : new Set((await changesOf(notebookId, { itemKey: item, happenings: true })).map(({ id }) => id))
  const kinds: readonly string[] | undefined = group === undefined ? undefined : historyGroups[group].kinds
  return history.filter(
    ({ id, kind }) => (ofItem?.has(id) ?? true) && (kinds === undefined || kinds.includes(kind)),
  )
}

async function lockedHeads(
  notebookId: string,
  history: readonly HistoryEntry[],
  revisions: readonly FrozenRevision[],
): Promise<LockedHead[]> {
  const seals = await sealsOf(notebookId)
  return revisions.flatMap(({ revision }) => {
    const seal = seals.get(revision.id)
    if (seal === undefined) return []
    const { history: head } = seal
    return [{ revision: revision.number, head, leads: leadsThrough(history, head) }]
  })
}
