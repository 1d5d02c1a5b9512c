import { inject } from 'vitest'
import { documentText } from '../../../lib/forms/parts.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { editNotebook } from '../../../lib/store/notebooks.ts'
import { documentOf } from '../../actions/world.ts'
import type { RefusalRow, Table } from './refusalRow.ts'

type Change = (document: NotebookDocument) => NotebookDocument

/** From here on `lib/store` is the store of the install that the browsers are at. */
export function openStore(): void {
  process.env.MEARING_DATA = inject('dataFolder')
}

/** The id of the notebook that both households are in. */
export function notebookOf({ a }: Table): string {
  openStore()
  return a.home.slice(a.home.lastIndexOf('/') + 1)
}

/** Writes a document straight into the store, as edits of somebody else would have left it. */
export async function rewritten(table: Table, change: Change): Promise<void> {
  await editNotebook({
    id: notebookOf(table),
    household: 'b',
    at: new Date(),
    change: (stored) => ({
      document: documentText(change(JSON.parse(stored))),
      changed: [],
      kept: undefined,
    }),
  })
}

/**
 * The document is another one in this row, or somebody changes it while the page stays as it was opened. After the row it
 * stands as before.
 */
export function elsewhere(changes: {
  readonly given?: Change
  readonly meanwhile?: Change
}): Pick<RefusalRow, 'given' | 'meanwhile' | 'after'> {
  let before: NotebookDocument | undefined
  const applied = (change: Change) => async (table: Table) => {
    before ??= await documentOf(notebookOf(table))
    await rewritten(table, change)
  }
  return {
    ...(changes.given ? { given: applied(changes.given) } : {}),
    ...(changes.meanwhile ? { meanwhile: applied(changes.meanwhile) } : {}),
    after: async (table) => {
      const stood = before
      before = undefined
      if (stood !== undefined) await rewritten(table, () => stood)
    },
  }
}

export const given = (change: Change) => elsewhere({ given: change })

export const meanwhile = (change: Change) => elsewhere({ meanwhile: change })

/** Some keys of the document are others. */
export const withKeys =
  (changed: Readonly<Record<string, unknown>>): Change =>
  (document) => ({ ...document, ...changed })

/** An entry, a thing or an item more, or another list of them. */
export const withList =
  <One>(key: string, change: (all: readonly One[]) => readonly unknown[]): Change =>
  (document) => ({ ...document, [key]: change((document[key] ?? []) as readonly One[]) })
