import { type NotebookDocument, readNotebook } from '../../../lib/forms/readNotebook.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'
import { draftDiffers, type FrozenRevision, frozenRevisions } from './standingRevision.ts'

/**
 * The revision that closed a notebook: the newest that all have signed, where it holds a closing and the draft still says
 * the very same. While there is one, only the books go on, until the last payment; once the closing was taken off, the
 * draft is another text, and stays open until all have signed it.
 */
export function closedBy(
  draft: { readonly document: NotebookDocument },
  newestFirst: readonly FrozenRevision[],
): FrozenRevision | undefined {
  const signed = newestFirst.find(({ stillToSign }) => stillToSign.length === 0)
  if (signed?.notebook.closing === undefined) return undefined
  return draftDiffers(draft, signed) ? undefined : signed
}

/** The number of the revision that closed the notebook, read from the store. */
export async function closedByNumber(notebookId: string): Promise<number | undefined> {
  const stored = await findNotebook(notebookId)
  const read = stored ? readNotebook(stored.document) : undefined
  // Most notebooks are not closed, and their revisions need not be read for that.
  if (!read?.ok || read.value.notebook.closing === undefined) return undefined
  const revisions = await frozenRevisions(notebookId, read.value.notebook)
  return closedBy(read.value, revisions)?.revision.number
}
