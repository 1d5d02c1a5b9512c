import { notFound } from 'next/navigation'
import { type ReaderThing, requireReader } from '../../../lib/access/readerAccess.ts'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { assert } from '../../../lib/core/assert.ts'
import { type NotebookDocument, readNotebook } from '../../../lib/forms/readNotebook.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'
import type { ReaderLink } from '../../../lib/store/readerLinks.ts'
import { type DraftFigures, draftFigures } from '../../notebook/server/capsOf.ts'
import { standingsOf } from '../../notebook/server/opened.ts'
import { type FrozenRevision, frozenRevisions } from '../../notebook/server/standingRevision.ts'

/** A notebook as a reader's link opens it. What of it may be shown is for the page to choose, by `link.content`. */
export type ReaderOpening = DraftFigures & {
  readonly link: ReaderLink
  readonly document: NotebookDocument
  readonly notebook: Notebook
  /** Newest first. */
  readonly revisions: readonly FrozenRevision[]
  /** The newest revision that all have signed; undefined while there is none. */
  readonly signed: FrozenRevision | undefined
}

/** Opens something by a reader's link, or ends the request with "not found". */
export async function openForReader(token: string, thing: ReaderThing): Promise<ReaderOpening> {
  const link = await requireReader(token, thing)
  const stored = (await findNotebook(link.notebookId)) ?? notFound()
  const read = readNotebook(stored.document)
  assert(read.ok, 'only notebooks that hold are stored')
  const { document, notebook } = read.value
  const revisions = await frozenRevisions(link.notebookId, notebook)
  return {
    link,
    document,
    notebook,
    ...draftFigures(notebook, await standingsOf(link.notebookId, document)),
    revisions,
    signed: revisions.find(({ stillToSign }) => stillToSign.length === 0),
  }
}
