import { readNotebook } from '../../../lib/forms/readNotebook.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'
import { type FrozenRevision, frozenRevisions } from './standingRevision.ts'

/**
 * The revision that closed a notebook: the newest that all have signed, where it holds a closing and the closing was not
 * taken off again since. While there is one, only the books go on, until the last payment.
 */
export function closedBy(
  draft: { readonly closing?: unknown },
  newestFirst: readonly FrozenRevision[],
): FrozenRevision | undefined {
  if (draft.closing === undefined) return undefined
  const signed = newestFirst.find(({ stillToSign }) => stillToSign.length === 0)
  return signed?.notebook.closing === undefined ? undefined : signed
}

/** The number of the revision that closed the notebook, read from the store. */
export async function closedByNumber(notebookId: string): Promise<number | undefined> {
  const stored = await findNotebook(notebookId)
  const read = stored ? readNotebook(stored.document) : undefined
  // Most notebooks are not closed, and their revisions need not be read for that.
  if (!read?.ok || read.value.notebook.closing === undefined) return undefined
  const revisions = await frozenRevisions(notebookId, read.value.notebook)
  return closedBy(read.value.notebook, revisions)?.revision.number
}

/** What is told to whoever edits a closed notebook. */
export function closedWords(number: number): string {
  return `Nothing was changed: the notebook was closed by revision ${number}, which all have signed. Either household can open it again on the page “Closing”.`
}
