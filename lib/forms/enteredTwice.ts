import { canonicalText } from '../core/agreement/canonicalText.ts'
import { writerOf } from './book.ts'
import { isObject, type NotebookDocument } from './readNotebook.ts'
import { tidyDraft } from './tidyDraft.ts'

/**
 * Whether the newest entry of a book stands in an earlier state of it already, at the place `from` or after: it was sent
 * twice because no answer came. What is worked out from the rest of the book may differ.
 */
export function hasEntered(next: NotebookDocument, document: NotebookDocument, from: number): boolean {
  const newest = whatIsSaid(book(next).at(-1))
  return book(document)
    .slice(from)
    .some((entry) => whatIsSaid(entry) === newest)
}

/**
 * Whether what was taken back at this place has been entered again since: an entry that says the same stands after it, and
 * was not taken back itself.
 */
export function standsAgain(document: NotebookDocument, index: number): boolean {
  const said = whatIsSaid(book(document)[index])
  return book(document)
    .slice(index + 1)
    .some((entry) => isObject(entry) && !('struck' in entry) && whatIsSaid(entry) === said)
}

/** An entry without what became of it after it was entered, and without what is worked out. */
function whatIsSaid(entry: unknown): string {
  if (!isObject(entry)) return ''
  const { own: _workedOut, confirmed: _since, waits: _until, struck: _after, valuation, ...said } = entry
  const { marks: _set, ...valued } = isObject(valuation) ? valuation : {}
  return canonicalText(tidyDraft({ ...said, valuation: valued, enteredBy: writerOf(entry) }, undefined))
}

function book(document: NotebookDocument): unknown[] {
  return Array.isArray(document.contributions) ? document.contributions : []
}
