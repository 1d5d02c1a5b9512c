import { listOfKind } from './parts.ts'
import { isObject, type NotebookDocument } from './readNotebook.ts'

/** A section, gate or common cost as it would be, whole. */
export type ItemAsProposed = { readonly id: string; readonly item: Readonly<Record<string, unknown>> }

/** The document with these items in the place of those that bear their ids; an id that no item bears changes nothing. */
export function withProposedItems(
  document: NotebookDocument,
  proposed: readonly ItemAsProposed[],
): NotebookDocument {
  const items = new Map(proposed.map(({ id, item }) => [id, { ...item, id }]))
  const put = (entry: unknown): unknown =>
    (isObject(entry) && typeof entry.id === 'string' ? items.get(entry.id) : undefined) ?? entry
  const lists = Object.values(listOfKind).flatMap((list) => {
    const entries = document[list]
    return Array.isArray(entries) ? [[list, entries.map(put)] as const] : []
  })
  return { ...document, ...Object.fromEntries(lists) }
}
