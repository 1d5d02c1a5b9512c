import type { Household } from '../core/people/household.ts'
import { inFormatOrder } from './parts.ts'
import { isObject, type NotebookDocument } from './readNotebook.ts'
import { tidyDraft } from './tidyDraft.ts'

/**
 * The document with one more entry at the end of the book, written by household `by`. The entry may be faulty;
 * `readDocument` says so.
 */
export function addContribution(
  document: NotebookDocument,
  draft: Record<string, unknown>,
  by?: Household,
): NotebookDocument {
  const entry = tidyDraft(draft, undefined) as Record<string, unknown>
  const { amount, hours, rate, struck: _never, enteredBy: _typed, ...rest } = entry
  // A form that was switched from hours to money still holds what was typed for the other.
  const figures = entry.kind === 'hours' ? { hours, rate } : { amount }
  const given = Object.fromEntries(
    Object.entries({ ...rest, ...figures, enteredBy: by }).filter(([, value]) => value !== undefined),
  )
  return inFormatOrder({ ...document, contributions: [...book(document), given] })
}

/** Path of the entry that `addContribution` adds. */
export function contributionPath(document: NotebookDocument): string {
  return `contributions[${book(document).length}].`
}

/**
 * The document with one entry taken back. Undefined where it is not the entry that was meant, is struck already, or
 * was entered by the other household (where the file does not say: is the other household's): neither can act for the
 * other, and a book from which one takes the other's receipts is none.
 */
export function strikeContribution(
  document: NotebookDocument,
  index: number,
  struck: { readonly on: string; readonly by: Household; readonly why: string },
  isMeant: (entry: unknown) => boolean,
): NotebookDocument | undefined {
  const entries = book(document)
  const entry = entries[index]
  if (!isObject(entry) || 'struck' in entry || !isMeant(entry)) return undefined
  if (writerOf(entry) !== struck.by) return undefined
  return { ...document, contributions: entries.with(index, { ...entry, struck }) }
}

/** Who wrote an entry: as the file says, else the household that the entry is of. */
export function writerOf(entry: { readonly enteredBy?: unknown; readonly household?: unknown }): unknown {
  return entry.enteredBy || entry.household
}

function book(document: NotebookDocument): unknown[] {
  return Array.isArray(document.contributions) ? document.contributions : []
}
