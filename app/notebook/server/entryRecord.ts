import { itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import type { Household } from '../../../lib/core/people/household.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { type NotebookDocument, readDocument } from '../../../lib/forms/readNotebook.ts'
import type { RecordedEdit } from '../../../lib/store/recordedEdits.ts'
import { type EntryStep, entryDetail } from '../../../lib/words/entryHappeningText.ts'
import { householdName } from '../../../lib/words/labels.ts'

/**
 * What goes on record of an entry of the book, so that the other household is told of it; nothing where the document does
 * not hold, for then nothing is stored.
 */
export function entryRecord(
  document: NotebookDocument,
  step: EntryStep,
  said: { readonly index: number; readonly by: Household; readonly why?: string },
): { readonly record?: RecordedEdit } {
  const read = readDocument(document)
  const entry = read.ok ? read.value.notebook.contributions[said.index] : undefined
  if (!read.ok || entry === undefined) return {}
  const { notebook } = read.value
  const { currency } = notebook
  const giver = householdName(notebook, entry.household)
  const detail = entryDetail(step, entry, { ...said, giver, currency, digits: digitsOf(notebook) })
  return { record: { kind: 'books', ...(entry.for === '' ? {} : { itemKey: itemKey(entry.for) }), detail } }
}
