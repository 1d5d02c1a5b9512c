'use server'

import { redirect } from 'next/navigation'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { markedInBooks } from '../../../lib/core/ledger/markedInBooks.ts'
import { withBookBroughtBy } from '../../../lib/forms/importedBook.ts'
import { readDocument } from '../../../lib/forms/readNotebook.ts'
import { booksRefusals } from '../../../lib/words/booksText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { pressFields } from './pressFields.ts'
import { readImport } from './readImport.ts'
import { editDocument } from './savePart.ts'

/**
 * Puts a notebook file in the notebook's place. Refused with the path of every fault, and where the books hold what both
 * households have marked; then nothing is changed. What it changes in the books goes on record too, and it acts for nobody else.
 */
export async function replaceByFile(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = await readImport(pressFields(form))
  if (!read.ok) return { refused: read.refused }
  const answer = await editDocument(notebookId, household, (document) => {
    const stored = readDocument(document)
    // A file brings no marks, so it would undo alone what both have marked.
    if (stored.ok && markedInBooks(stored.value.notebook))
      return { faults: [{ path: '', message: booksRefusals.fileInstead }] }
    return { next: withBookBroughtBy(household, read.value.document, document), whole: true }
  })
  if ('faults' in answer) return { refused: answer.faults.map((fault) => fault.message).join('\n') }
  redirect(`/notebook/${notebookId}/record`)
}
