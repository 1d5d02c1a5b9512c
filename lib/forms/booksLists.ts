import type { Household } from '../core/people/household.ts'
import { inFormatOrder } from './parts.ts'
import { isObject, type NotebookDocument } from './readNotebook.ts'

export type Json = Record<string, unknown>
/** A household's mark in the books, on a day. */
export type Mark = { readonly household: Household; readonly on: string }

/** An entry or a list in the books with a household's mark, dated. */
export function withMark(entry: Json, { household, on }: Mark): Json {
  return { ...entry, marks: { ...marksIn(entry), [household]: { on } } }
}

/** The same without it. */
export function withoutMark(entry: Json, household: Household): Json {
  const { [household]: _gone, ...others } = marksIn(entry)
  return { ...entry, marks: others }
}

export function marksIn(entry: Json): Json {
  return isObject(entry.marks) ? entry.marks : {}
}

export function bothMarked(entry: Json): boolean {
  const marks = marksIn(entry)
  return marks.a !== undefined && marks.b !== undefined
}

/** A missing text and an empty one are the same. */
export function said(value: unknown): string {
  return value === undefined || value === null || value === false ? '' : String(value)
}

export function listIn(document: NotebookDocument, key: 'bought' | 'things'): readonly Json[] {
  const list = booksIn(document)[key]
  return Array.isArray(list) ? list.filter(isObject) : []
}

export function withList(
  document: NotebookDocument,
  key: 'bought' | 'things',
  list: readonly Json[],
): NotebookDocument {
  return inFormatOrder({ ...document, books: { ...booksIn(document), [key]: list } })
}

function booksIn(document: NotebookDocument): Json {
  return isObject(document.books) ? document.books : {}
}
