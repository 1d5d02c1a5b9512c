import { decisionKey, idOfItemKey } from '../core/agreement/agreedItems.ts'
import { canonicalText } from '../core/agreement/canonicalText.ts'
import type { NotUndone } from '../words/removedText.ts'
import { keepPassages } from './gatePassages.ts'
import { withItemPutBack } from './itemPutBack.ts'
import { inFormatOrder, kindOf, listOfKind, removeItem } from './parts.ts'
import { isObject, type NotebookDocument } from './readNotebook.ts'
import { type RestOfFile, restOfFile, withRestOfFile } from './restOfFile.ts'

/** What the record has of one change of an edit. */
export type RecordedChange = {
  readonly itemKey: string
  readonly previousKey?: string
  /** Null where there was no such item. */
  readonly before: unknown
  /** Null where there is no such item any more. */
  readonly after: unknown
}

export type Undone = { readonly next: NotebookDocument } | { readonly not: NotUndone }

/**
 * The document with what one edit did taken back: every item as it was before, all of them or none. Refused where any of
 * them is not as that edit left it, for that would take back what was done since, and where all stands so already.
 *
 * @param changes of one edit, newest first, as the record gives them
 */
export function editUndone(document: NotebookDocument, changes: readonly RecordedChange[]): Undone {
  if (changes.length === 0) return { not: 'not on record' }
  const beside = changes.filter(isBeside)
  const now: NotebookDocument = { ...document, file: restOfFile(document) }
  if (beside.some(({ itemKey, after }) => !isSame(now[itemKey], after))) return changedSince
  let next = document
  for (const change of inTurn(changes.filter((one) => !isBeside(one)))) {
    const undone = changeUndone(next, change)
    if ('not' in undone) return undone
    next = undone.next
  }
  for (const change of beside) next = besideUndone(next, change)
  return isSame(next, document) ? { not: 'as it was' } : { next: inFormatOrder(next) }
}

/** What moves by itself as items come and go: compared before, and put back after, all of them. */
const besideItems = ['contributions', 'books', 'file'] as const

export function isBeside({ itemKey }: Pick<RecordedChange, 'itemKey'>): boolean {
  return besideItems.some((key) => key === itemKey)
}

function besideUndone(document: NotebookDocument, { itemKey, before }: RecordedChange): NotebookDocument {
  if (itemKey === 'file') return withRestOfFile(document, before as RestOfFile)
  const { [itemKey]: _now, ...others } = document
  return isNothing(before) ? others : { ...others, [itemKey]: before }
}

/** The currency comes first, for prices mean something in it; then all in the order of the file, as it was removed from it. */
function inTurn(newestFirst: readonly RecordedChange[]): readonly RecordedChange[] {
  const isHeading = ({ itemKey }: RecordedChange) => itemKey === 'heading'
  const rest = newestFirst.filter((change) => !isHeading(change))
  return [...newestFirst.filter(isHeading), ...rest.toReversed()]
}

function changeUndone(document: NotebookDocument, change: RecordedChange): Undone {
  const id = idOfItemKey(change.itemKey)
  if (id !== undefined) return itemUndone(document, id, change)
  if (change.itemKey.startsWith('decision:')) return decisionUndone(document, change)
  const key = keyOf[change.itemKey]
  if (key === undefined) return change.itemKey === 'heading' ? headingUndone(document, change) : notOnRecord
  const [before, after] = [withoutCurrency(change.before, key), withoutCurrency(change.after, key)]
  if (!isSame(document[key] ?? null, after)) return changedSince
  if (isPriced(change.itemKey, document, change.before)) return otherCurrency
  const { [key]: _now, ...others } = document
  return { next: isNothing(before) ? others : { ...others, [key]: before } }
}

/** Which key of the file an item of the record stands for, where it is one. */
const keyOf: Readonly<Record<string, string>> = {
  line: 'line',
  parties: 'households',
  caps: 'caps',
  arrangements: 'arrangements',
  terms: 'terms',
  closing: 'closing',
  checks: 'checks',
  dates: 'dates',
  buildUps: 'buildUps',
  inventory: 'inventory',
  letter: 'letter',
}

const changedSince = { not: 'changed since' } as const
const otherCurrency = { not: 'other currency' } as const
const notOnRecord = { not: 'not on record' } as const

function itemUndone(document: NotebookDocument, id: string, { before, after }: RecordedChange): Undone {
  const kind = kindOf(document, id)
  if (after === null) return kind === undefined ? withItemPutBack(document, id, before) : changedSince
  if (kind === undefined || !isObject(after)) return changedSince
  const items = (document[listOfKind[kind]] as unknown[]).filter(isObject)
  const place = items.findIndex((item) => item.id === id)
  if (!isSame(items[place], after.item)) return changedSince
  if (before === null) return { next: removeItem(document, id) }
  if (!isObject(before) || !isObject(before.item)) return notOnRecord
  if (before.currency !== document.currency) return otherCurrency
  const next = { ...document, [listOfKind[kind]]: items.with(place, before.item) }
  // Counted by both, and never by one household alone.
  return { next: keepPassages(document, next, { part: 'item', id }) }
}

/** A decision has no place on record: one that was taken out comes back at the end. */
function decisionUndone(document: NotebookDocument, { itemKey, before, after }: RecordedChange): Undone {
  const all = Array.isArray(document.decisions) ? (document.decisions as unknown[]) : []
  const place = all.findIndex((one) => decisionKey(one) === itemKey)
  if (after === null)
    return place === -1 ? { next: { ...document, decisions: [...all, before] } } : changedSince
  if (place === -1) return changedSince
  const decisions = before === null ? all.toSpliced(place, 1) : all.with(place, before)
  return { next: { ...document, decisions } }
}

/** Title, units and currency; the households in it are an item of their own. */
function headingUndone(document: NotebookDocument, { before, after }: RecordedChange): Undone {
  if (!isObject(before) || !isObject(after)) return notOnRecord
  const keys = [...new Set([...Object.keys(before), ...Object.keys(after)])]
  if (keys.some((key) => !isSame(document[key] ?? null, after[key] ?? null))) return changedSince
  const others = Object.fromEntries(Object.entries(document).filter(([key]) => !keys.includes(key)))
  return { next: { ...others, ...before } }
}

/** Caps and arrangements are on record with the currency that they were written in. */
function withoutCurrency(stored: unknown, key: string): unknown {
  if (key !== 'caps' && key !== 'arrangements') return stored
  return isObject(stored) ? (stored[key] ?? null) : stored
}

function isPriced(itemKey: string, document: NotebookDocument, before: unknown): boolean {
  const priced = itemKey === 'caps' || itemKey === 'arrangements'
  return priced && isObject(before) && before.currency !== document.currency
}

function isSame(one: unknown, other: unknown): boolean {
  if (isNothing(one) && isNothing(other)) return true
  return canonicalText(one ?? null) === canonicalText(other ?? null)
}

/** An empty list or object says the same as no key at all. */
function isNothing(value: unknown): boolean {
  if (value === null || value === undefined) return true
  return Array.isArray(value) ? value.length === 0 : isObject(value) && Object.keys(value).length === 0
}
