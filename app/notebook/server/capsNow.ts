import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { readNotebook } from '../../../lib/forms/readNotebook.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'
import { draftFigures } from './capsOf.ts'
import { standingsOf } from './opened.ts'

/** The caps of a notebook that are in force now, for whoever works out figures without a page: see `capsInForce`. */
export async function capsNow(notebookId: string): Promise<Notebook['caps']> {
  const stored = await findNotebook(notebookId)
  const read = stored ? readNotebook(stored.document) : undefined
  if (!read?.ok) return {}
  const { notebook, document } = read.value
  return draftFigures(notebook, await standingsOf(notebookId, document)).inForce.caps
}
