import type { LineOf, Notebook } from '../../../lib/core/agreement/notebook.ts'
import { assert } from '../../../lib/core/assert.ts'
import { lineFinder } from '../../../lib/core/ledger/findLine.ts'
import { type NotebookDocument, readDocument } from '../../../lib/forms/readNotebook.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'
import { type FrozenRevision, frozenRevisions } from './standingRevision.ts'

/** What the books of a document are held against. */
export type BooksPlan = {
  /** The newest revision that all have signed, with the books of the document; the document itself while none is. */
  readonly notebook: Notebook
  /** A line of that plan, or of the draft that is to amend it: something may be bought before it is signed. */
  readonly isPlanned: (line: LineOf) => boolean
}

/**
 * Finds the plan for the document as it stands inside a write transaction, from what was signed before it.
 *
 * @param signed the newest revision that all have signed
 */
export function booksPlan(document: NotebookDocument, signed: FrozenRevision | undefined): BooksPlan {
  const read = readDocument(document)
  assert(read.ok, 'only notebooks that hold are stored')
  const draft = read.value.notebook
  const frozen = signed?.notebook.currency === draft.currency ? signed.notebook : undefined
  const { contributions, books } = draft
  const notebook = frozen === undefined ? draft : { ...frozen, contributions, books }
  const finders = [lineFinder(notebook), ...(frozen === undefined ? [] : [lineFinder(draft)])]
  return { notebook, isPlanned: (line) => finders.some((find) => find(line) !== undefined) }
}

/** The newest revision of a notebook that all have signed, and when the notebook was started. */
export async function signedBefore(
  notebookId: string,
): Promise<{ readonly signed: FrozenRevision | undefined; readonly startedOn: string }> {
  const stored = await findNotebook(notebookId)
  assert(stored !== undefined, 'a household was let in to it')
  const read = readDocument(JSON.parse(stored.document))
  assert(read.ok, 'only notebooks that hold are stored')
  const revisions = await frozenRevisions(notebookId, read.value.notebook)
  return {
    signed: revisions.find(({ stillToSign }) => stillToSign.length === 0),
    startedOn: stored.createdAt.toISOString().slice(0, 10),
  }
}
