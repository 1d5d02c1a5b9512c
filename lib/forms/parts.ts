import { canonicalText } from '../core/agreement/canonicalText.ts'
import type { ItemKind } from '../core/agreement/notebook.ts'
import { markChanged } from '../core/takeoff/offeredLines.ts'
import { isObject, type NotebookDocument } from './readNotebook.ts'
import { tidyDraft } from './tidyDraft.ts'

/** A part of the notebook that one form edits: some keys of the whole, or one section, gate or common cost. */
export type Part = { readonly part: WholePart } | { readonly part: 'item'; readonly id: string }

/** Parts that are keys of the whole. */
export const wholeParts = [
  'heading',
  'line',
  'caps',
  'arrangements',
  'terms',
  'checks',
  'decisions',
  'closing',
  'dates',
  'buildUps',
  'inventory',
  'letter',
] as const
export type WholePart = (typeof wholeParts)[number]

const keysOf: Readonly<Record<WholePart, readonly string[]>> = {
  heading: ['title', 'currency', 'units', 'households'],
  line: ['line'],
  caps: ['caps'],
  arrangements: ['arrangements'],
  terms: ['terms'],
  checks: ['checks'],
  decisions: ['decisions'],
  closing: ['closing'],
  dates: ['dates'],
  buildUps: ['buildUps'],
  inventory: ['inventory'],
  letter: ['letter'],
}

export const listOfKind: Readonly<Record<ItemKind, 'sections' | 'gates' | 'common'>> = {
  section: 'sections',
  gate: 'gates',
  common: 'common',
}

const idLetter: Readonly<Record<ItemKind, string>> = { section: 's', gate: 'g', common: 'c' }

/** The part as it stands; undefined where the item is gone. */
export function readPart(document: NotebookDocument, part: Part): Record<string, unknown> | undefined {
  if (part.part === 'item') {
    const place = placeOf(document, part.id)
    return place === undefined ? undefined : itemsIn(document, place.list)[place.index]
  }
  return Object.fromEntries(
    keysOf[part.part].flatMap((key) => (key in document ? [[key, document[key]]] : [])),
  )
}

/**
 * The document with the part as the draft has it; idle blanks of the form are left out. The draft may be faulty.
 *
 * @param by whose quantities the cost lines have: what the take-off itself brings up to date was not changed by hand
 */
export function writePart(
  document: NotebookDocument,
  part: Part,
  draft: Record<string, unknown>,
  by: 'hand' | 'take-off' = 'hand',
): NotebookDocument {
  const current = readPart(document, part)
  const tidy = tidyDraft(draft, current) as Record<string, unknown>
  if (part.part !== 'item') {
    const kept = Object.fromEntries(
      keysOf[part.part].flatMap((key) => (key in tidy ? [[key, tidy[key]]] : [])),
    )
    const others = Object.fromEntries(
      Object.entries(document).filter(([key]) => !keysOf[part.part as 'line'].includes(key)),
    )
    return inFormatOrder({ ...others, ...kept })
  }
  const place = placeOf(document, part.id)
  if (place === undefined) return document
  // The id is the item's name in the file, in marks and in receipts: a form never changes it.
  const marked = by === 'hand' ? handMarked(current, tidy) : tidy
  const items = itemsIn(document, place.list).with(place.index, { ...marked, id: part.id })
  return { ...document, [place.list]: items }
}

/**
 * Cost lines of the take-off whose quantity was changed by hand no longer follow it, and say so; those of a section's
 * basic fence too.
 */
function handMarked(current: unknown, draft: Record<string, unknown>): Record<string, unknown> {
  const before = isObject(current) ? linesOf(current) : []
  const after = linesOf(draft)
  const marked = after.length === 0 ? draft : { ...draft, materials: markChanged(before, after) }
  if (!isObject(marked.basicFence)) return marked
  const basicFence = handMarked(isObject(current) ? current.basicFence : undefined, marked.basicFence)
  return { ...marked, basicFence }
}

function linesOf(item: Record<string, unknown>): Record<string, unknown>[] {
  return Array.isArray(item.materials) && item.materials.every(isObject) ? item.materials : []
}

/** Path of the part in the file, to be put before a field's path: `sections[0].` or nothing. */
export function pathOfPart(document: NotebookDocument, part: Part): string {
  if (part.part !== 'item') return ''
  const place = placeOf(document, part.id)
  return place === undefined ? '' : `${place.list}[${place.index}].`
}

/**
 * Adds an item at the end of its list, with an id that no item has.
 *
 * @param usedBefore ids that were given to items which are gone: a new item must not inherit their history
 */
export function addItem(
  document: NotebookDocument,
  kind: ItemKind,
  draft: Record<string, unknown>,
  usedBefore: readonly string[] = [],
): { document: NotebookDocument; id: string } {
  const id = freeId(document, kind, usedBefore)
  const list = listOfKind[kind]
  const { id: _typed, ...tidy } = tidyDraft(draft, undefined) as Record<string, unknown>
  const items = [...itemsIn(document, list), { id, ...tidy }]
  return { document: inFormatOrder({ ...document, [list]: items }), id }
}

/** The id of an item of the document that says the same as the one that was added to it; undefined where there is none. */
export function itemLike(
  document: NotebookDocument,
  added: { readonly document: NotebookDocument; readonly id: string },
): string | undefined {
  const saying = (item: Readonly<Record<string, unknown>> | undefined) => canonicalText({ ...item, id: '' })
  const wanted = saying(readPart(added.document, { part: 'item', id: added.id }))
  const list = placeOf(added.document, added.id)?.list ?? 'sections'
  const same = itemsIn(document, list).findLast((item) => saying(item) === wanted)
  return typeof same?.id === 'string' ? same.id : undefined
}

/**
 * Removes an item. Entries in the book that were taken back and name it stay, without the name; entries that count
 * must be taken back first, since the file may not name an item that is gone (`readDocument` refuses it).
 */
export function removeItem(document: NotebookDocument, id: string): NotebookDocument {
  const place = placeOf(document, id)
  if (place === undefined) return document
  const items = itemsIn(document, place.list).toSpliced(place.index, 1)
  const book = document.contributions
  if (!Array.isArray(book)) return { ...document, [place.list]: items }
  const contributions = book.map((entry) => {
    if (!isObject(entry) || entry.for !== id || !('struck' in entry)) return entry
    const { for: _gone, ...rest } = entry
    return rest
  })
  return { ...document, [place.list]: items, contributions }
}

/** Moves an item within its list; beyond either end it stays where it is. */
export function moveItem(document: NotebookDocument, id: string, by: 1 | -1): NotebookDocument {
  const place = placeOf(document, id)
  if (place === undefined) return document
  const items = itemsIn(document, place.list)
  const to = place.index + by
  const [item, other] = [items[place.index], items[to]]
  if (item === undefined || other === undefined) return document
  return { ...document, [place.list]: items.with(place.index, other).with(to, item) }
}

function placeOf(
  document: NotebookDocument,
  id: string,
): { list: 'sections' | 'gates' | 'common'; index: number } | undefined {
  for (const list of Object.values(listOfKind)) {
    const index = itemsIn(document, list).findIndex((item) => item.id === id)
    if (index >= 0) return { list, index }
  }
  return undefined
}

/** The kind of the item with this id; undefined where there is none. */
export function kindOf(document: NotebookDocument, id: string): ItemKind | undefined {
  const list = placeOf(document, id)?.list
  return (['section', 'gate', 'common'] as const).find((kind) => listOfKind[kind] === list)
}

/** `s1`, `s2` …: the first that no section, gate or common cost has, and no receipt still speaks of. */
function freeId(document: NotebookDocument, kind: ItemKind, usedBefore: readonly string[]): string {
  const present = Object.values(listOfKind).flatMap((list) => itemsIn(document, list).map((item) => item.id))
  const taken = new Set<unknown>([...present, ...usedBefore])
  for (let number = itemsIn(document, listOfKind[kind]).length + 1; ; number += 1) {
    const id = `${idLetter[kind]}${number}`
    if (!taken.has(id)) return id
  }
}

function itemsIn(document: NotebookDocument, list: string): Record<string, unknown>[] {
  const items = document[list]
  return Array.isArray(items) ? items.filter(isObject) : []
}

const formatOrder = [
  'format',
  'version',
  'title',
  'currency',
  'units',
  'households',
  'line',
  'sections',
  'gates',
  'common',
  'caps',
  'arrangements',
  'contributions',
  'terms',
  'checks',
  'decisions',
  'closing',
  'dates',
  'buildUps',
  'inventory',
  'letter',
  'books',
]

/** Whether the format knows a key of the document itself. */
export function isFormatKey(key: string): boolean {
  return formatOrder.includes(key)
}

/** Keys in the order of the format's description, unknown ones last, so that an export reads like the description. */
export function inFormatOrder(document: NotebookDocument): NotebookDocument {
  const rank = (key: string) => {
    const index = formatOrder.indexOf(key)
    return index < 0 ? formatOrder.length : index
  }
  return Object.fromEntries(Object.entries(document).sort(([left], [right]) => rank(left) - rank(right)))
}

/** The file as it is stored and exported. */
export function documentText(document: NotebookDocument): string {
  return `${JSON.stringify(document, null, 2)}\n`
}
