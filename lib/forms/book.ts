import type { Household } from '../core/people/household.ts'
import { inFormatOrder } from './parts.ts'
import { isObject, type NotebookDocument } from './readNotebook.ts'
import { tidyDraft } from './tidyDraft.ts'

/** The document with one more entry at the end of the book. The entry may be faulty; `readDocument` says so. */
export function addContribution(
  document: NotebookDocument,
  draft: Record<string, unknown>,
): NotebookDocument {
  const entry = tidyDraft(draft, undefined) as Record<string, unknown>
  const { amount, hours, rate, struck: _never, ...rest } = entry
  // A form that was switched from hours to money still holds what was typed for the other.
  const figures = entry.kind === 'hours' ? { hours, rate } : { amount }
  const given = Object.fromEntries(
    Object.entries({ ...rest, ...figures }).filter(([, value]) => value !== undefined),
  )
  return inFormatOrder({ ...document, contributions: [...book(document), given] })
}

/** Path of the entry that `addContribution` adds. */
export function contributionPath(document: NotebookDocument): string {
  return `contributions[${book(document).length}].`
}

/** The document with one entry taken back; undefined where it is not the entry that was meant, or is struck already. */
export function strikeContribution(
  document: NotebookDocument,
  index: number,
  struck: { readonly on: string; readonly by: Household; readonly why: string },
  isMeant: (entry: unknown) => boolean,
): NotebookDocument | undefined {
  const entries = book(document)
  const entry = entries[index]
  if (!isObject(entry) || 'struck' in entry || !isMeant(entry)) return undefined
  return { ...document, contributions: entries.with(index, { ...entry, struck }) }
}

function book(document: NotebookDocument): unknown[] {
  return Array.isArray(document.contributions) ? document.contributions : []
}
