import { database } from './database.ts'
import { type Happening, putOnRecord } from './happenings.ts'
import { editIn } from './notebooks.ts'

/** What goes on record beside the edit itself. */
export type RecordedEdit = {
  readonly kind: Happening
  readonly itemKey?: string
  readonly detail: Readonly<Record<string, unknown>>
}

/** One edit of the document and what goes on record of it, in one transaction. An edit that is refused leaves no record. */
export async function editOnRecord<Kept>(
  edit: Parameters<typeof editIn<Kept>>[1],
  record: RecordedEdit,
): Promise<Kept> {
  return database().write(async (tables) => {
    let written = false
    const kept = await editIn(tables, {
      ...edit,
      change: (stored) => {
        const outcome = edit.change(stored)
        written = 'document' in outcome && outcome.document !== stored
        return outcome
      },
    })
    if (written) {
      const { id: notebookId, household, at } = edit
      await putOnRecord(tables, { notebookId, household, at, ...record })
    }
    return kept
  })
}
