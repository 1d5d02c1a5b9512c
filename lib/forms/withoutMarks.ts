import { isObject, type NotebookDocument } from './readNotebook.ts'

/**
 * A document as an import takes it: without a mark of any kind. A file can say anything, and nobody marks for another. A
 * payment that says it was confirmed waits to be confirmed again.
 */
export function withoutMarks(document: NotebookDocument): NotebookDocument {
  const { contributions, books } = document
  return {
    ...document,
    ...(Array.isArray(contributions) ? { contributions: contributions.map(entryWithoutMarks) } : {}),
    ...(isObject(books) ? { books: booksWithoutMarks(books) } : {}),
  }
}

/** An entry of the book without marks; one that was confirmed waits. */
export function entryWithoutMarks(entry: unknown): unknown {
  if (!isObject(entry)) return entry
  const { confirmed, ...rest } = entry
  const waiting = confirmed === undefined ? rest : { ...rest, waits: true }
  return isObject(rest.valuation) ? { ...waiting, valuation: unmarked(rest.valuation) } : waiting
}

function booksWithoutMarks(books: Record<string, unknown>): Record<string, unknown> {
  const { bought: _marked, ...rest } = books
  const lists = Object.entries(rest).map(([key, list]) => [
    key,
    Array.isArray(list) ? list.map(key === 'things' ? unmarkedThing : unmarked) : list,
  ])
  // A line that nobody has marked is no line that was marked as bought.
  return Object.fromEntries(lists)
}

function unmarked(entry: unknown): unknown {
  if (!isObject(entry) || !('marks' in entry)) return entry
  const { marks: _never, ...rest } = entry
  return rest
}

/** What both marked of a thing before it was changed is marks too, and so is a household's word that it is off the list. */
function unmarkedThing(entry: unknown): unknown {
  if (!isObject(entry)) return entry
  const { agreed: _never, off: _norThis, ...rest } = entry
  return unmarked(rest)
}
