import type { ItemKind } from '../core/agreement/notebook.ts'
import type { NotPutBack } from '../words/removedText.ts'
import { inFormatOrder, kindOf, listOfKind } from './parts.ts'
import { isObject, type NotebookDocument } from './readNotebook.ts'

/**
 * The document with an item that was removed, as it was then, at the end of its list and under its own id: it is the same
 * item, and its history goes on. Money that was written in another currency would mean something else, so it stays away.
 *
 * @param before what the record has of it: the item with the currency that it was priced in
 */
export function withItemPutBack(
  document: NotebookDocument,
  id: string,
  before: unknown,
): { readonly next: NotebookDocument } | { readonly not: NotPutBack } {
  // Put back in another window, the newest on record is that it came back.
  if (kindOf(document, id) !== undefined) return { not: 'there already' }
  if (!isObject(before) || !isObject(before.item) || before.item.id !== id) return { not: 'not on record' }
  if (before.currency !== document.currency) return { not: 'other currency' }
  const list = listOfKind[kindOfRecord(before.item)]
  const items = Array.isArray(document[list]) ? (document[list] as unknown[]) : []
  return { next: inFormatOrder({ ...document, [list]: [...items, before.item] }) }
}

const ownKeys = {
  section: ['from', 'to', 'height', 'infill', 'drainage', 'basicFence'],
  gate: ['at', 'opening', 'stands', 'uses', 'swing', 'latch'],
} as const

/** The record names no kind: told by what only a section or only a gate has, else by the letter that ids begin with. */
function kindOfRecord(item: Readonly<Record<string, unknown>>): ItemKind {
  const has = (keys: readonly string[]) => keys.some((key) => key in item)
  if (has(ownKeys.section)) return 'section'
  if (has(ownKeys.gate)) return 'gate'
  return ({ s: 'section', g: 'gate' } as const)[String(item.id).charAt(0) as 's'] ?? 'common'
}
