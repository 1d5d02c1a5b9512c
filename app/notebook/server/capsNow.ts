import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { ForBoth } from '../../../lib/core/people/household.ts'
import { readNotebook } from '../../../lib/forms/readNotebook.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'
import { type DraftFigures, draftFigures } from './capsOf.ts'
import { standingsOf } from './opened.ts'

/** The caps of a notebook that are in force now, for whoever works out figures without a page: see `capsInForce`. */
export async function capsNow(notebookId: string): Promise<Notebook['caps']> {
  return (await figuresNow(notebookId))?.inForce.caps ?? {}
}

/** Who has marked the caps of a notebook as they stand in its draft. */
export async function capsMarkedIn(notebookId: string): Promise<ForBoth<boolean>> {
  return (await figuresNow(notebookId))?.capsMarked ?? { a: false, b: false }
}

async function figuresNow(notebookId: string): Promise<DraftFigures | undefined> {
  const stored = await findNotebook(notebookId)
  const read = stored ? readNotebook(stored.document) : undefined
  if (!read?.ok) return undefined
  const { notebook, document } = read.value
  return draftFigures(notebook, await standingsOf(notebookId, document))
}
