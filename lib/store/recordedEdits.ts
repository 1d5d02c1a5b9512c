import { database } from './database.ts'
import { type Happening, putOnRecord } from './happenings.ts'
import { type Edit, editIn } from './notebooks.ts'

/** What goes on record beside the edit itself. */
export type RecordedEdit = {
  readonly kind: Happening
  readonly itemKey?: string
  readonly detail: Readonly<Record<string, unknown>>
}

export type RecordingEdit<Kept> = Edit<Kept> & { readonly record?: RecordedEdit }

/** One edit of the document and what goes on record of it, in one transaction. What changes nothing leaves no record. */
export async function editOnRecord<Kept>(
  edit: Omit<Parameters<typeof editIn<Kept>>[1], 'change'> & {
    readonly change: (document: string) => RecordingEdit<Kept>
  },
): Promise<Kept> {
  return database().write(async (tables) => {
    let record: RecordedEdit | undefined
    const kept = await editIn(tables, {
      ...edit,
      change: (stored) => {
        const outcome = edit.change(stored)
        record = 'document' in outcome && outcome.document !== stored ? outcome.record : undefined
        return outcome
      },
    })
    const { id: notebookId, household, at } = edit
    if (record !== undefined) await putOnRecord(tables, { notebookId, household, at, ...record })
    return kept
  })
}
