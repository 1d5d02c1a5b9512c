import type { Household } from '../core/people/household.ts'
import { inFormatOrder } from './parts.ts'
import { isObject, type NotebookDocument } from './readNotebook.ts'
import { tidyDraft } from './tidyDraft.ts'

type Stored = Readonly<Record<string, unknown>>

/** The document with one more conversion, asked for by a household: it carries that household's own mark. */
export function addConversion(
  document: NotebookDocument,
  draft: Stored,
  by: Household,
  on: string,
): NotebookDocument {
  const { to, item, hours, rate, why } = tidyDraft(draft, undefined) as Stored
  const typed = Object.entries({ to, item, hours, rate, on, why }).filter(([, value]) => value !== undefined)
  const asked = { household: by, ...Object.fromEntries(typed), marks: { [by]: { on } } }
  return withConversions(document, [...conversionsIn(document), asked])
}

/** Path of the conversion that `addConversion` adds. */
export function conversionPath(document: NotebookDocument): string {
  return `books.conversions[${conversionsIn(document).length}].`
}

/**
 * The document with a household's mark on a conversion; undefined where it is not the one that was meant, or has that
 * mark. One that came with a file has none, not even that of the household that asked for it.
 */
export function markConversion(
  document: NotebookDocument,
  index: number,
  by: Household,
  on: string,
  isMeant: (conversion: unknown) => boolean,
): NotebookDocument | undefined {
  const all = conversionsIn(document)
  const one = all[index]
  if (one === undefined || !isMeant(one)) return undefined
  const marks = isObject(one.marks) ? one.marks : {}
  if (marks[by] !== undefined) return undefined
  return withConversions(document, all.with(index, { ...one, marks: { ...marks, [by]: { on } } }))
}

/**
 * The document without a conversion. Only the household that asked for it takes it back, and only until the other has
 * marked it: then both have agreed, and it stays.
 */
export function withdrawConversion(
  document: NotebookDocument,
  index: number,
  by: Household,
  isMeant: (conversion: unknown) => boolean,
): NotebookDocument | undefined {
  const all = conversionsIn(document)
  const one = all[index]
  if (one === undefined || !isMeant(one) || one.household !== by) return undefined
  const other = by === 'a' ? 'b' : 'a'
  if (isObject(one.marks) && one.marks[other] !== undefined) return undefined
  return withConversions(document, all.toSpliced(index, 1))
}

/** The conversions as they are stored. */
export function conversionsIn(document: NotebookDocument): readonly Stored[] {
  const { books } = document
  return isObject(books) && Array.isArray(books.conversions) ? books.conversions.filter(isObject) : []
}

/** A list or books with nothing in them say nothing, and are left out. */
function withConversions(document: NotebookDocument, conversions: readonly Stored[]): NotebookDocument {
  const { books: before, ...rest } = document
  const { conversions: _were, ...others } = isObject(before) ? before : {}
  const books = conversions.length === 0 ? others : { ...others, conversions }
  return inFormatOrder(Object.keys(books).length === 0 ? rest : { ...rest, books })
}
