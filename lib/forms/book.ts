import { type ContributionKind, contributionKinds, type LineOf } from '../core/agreement/notebook.ts'
import type { Household } from '../core/people/household.ts'
import { inFormatOrder } from './parts.ts'
import { isObject, type NotebookDocument } from './readNotebook.ts'
import { tidyDraft } from './tidyDraft.ts'

/**
 * The document with one more entry at the end of the book, written by household `by`. The entry may be faulty;
 * `readDocument` says so.
 *
 * @param own of its hours, those beyond the ceiling; empty: none. What a form says of that itself is left out
 */
export function addContribution(
  document: NotebookDocument,
  draft: Record<string, unknown>,
  by?: Household,
  own = '',
): NotebookDocument {
  const entry = tidyDraft(draft, undefined) as Record<string, unknown>
  const {
    struck: _never,
    confirmed: _norThis,
    enteredBy: _typed,
    own: _said,
    ownIsOurs: _asked,
    ...typed
  } = entry
  // A form that was switched from hours to money still holds what was typed for the other.
  const kind = contributionKinds.find((one) => one === entry.kind)
  const unfit = kind === undefined ? [] : unfitKeys[kind]
  const given = Object.fromEntries(
    Object.entries({
      ...typed,
      ...unmarkedValuation(entry),
      ...(own === '' ? {} : { own }),
      enteredBy: by,
    }).filter(([key, value]) => value !== undefined && !unfit.includes(key)),
  )
  return inFormatOrder({ ...document, contributions: [...book(document), given] })
}

const ofHours = ['hours', 'rate', 'task', 'own']
const ofTransfer = ['means', 'waits']
/** What an entry of each kind can't have. */
const unfitKeys: Readonly<Record<ContributionKind, readonly string[]>> = {
  cash: [...ofHours, ...ofTransfer, 'valuation'],
  material: [...ofHours, ...ofTransfer],
  refund: [...ofHours, ...ofTransfer, 'valuation'],
  transfer: [...ofHours, 'valuation', 'lines', 'shop'],
  hours: [...ofTransfer, 'amount', 'valuation', 'lines', 'shop'],
}

/** How goods were valued, without marks: each household sets its own, on what was entered. */
function unmarkedValuation({ valuation }: Record<string, unknown>) {
  if (!isObject(valuation)) return {}
  const { marks: _never, ...rest } = valuation
  return { valuation: Object.keys(rest).length === 0 ? undefined : rest }
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

/** How many entries the book has, those that were taken back too. */
export function entryCount(document: NotebookDocument): number {
  return book(document).length
}

function book(document: NotebookDocument): unknown[] {
  return Array.isArray(document.contributions) ? document.contributions : []
}

/** The document with one of an entry's lines put on another line of the plan, or on none. */
export function moveSpentLine(
  document: NotebookDocument,
  place: { readonly entry: number; readonly line: number },
  to: LineOf | undefined,
): NotebookDocument {
  const entries = book(document)
  const entry = entries[place.entry]
  if (!isObject(entry) || !Array.isArray(entry.lines)) return document
  const lines = entry.lines.flatMap((one, at) =>
    at !== place.line ? [one] : to === undefined ? [] : [{ ...one, ...to }],
  )
  return { ...document, contributions: entries.with(place.entry, { ...entry, lines }) }
}

/** The document with one entry of the book changed; the same where there is none at that place. */
export function changeEntry(
  document: NotebookDocument,
  index: number,
  change: (entry: Record<string, unknown>) => Record<string, unknown>,
): NotebookDocument {
  const entry = book(document)[index]
  return isObject(entry)
    ? { ...document, contributions: book(document).with(index, change(entry)) }
    : document
}

/** An entry of the book as it is stored; undefined where there is none at that place. */
export function entryAt(document: NotebookDocument, index: number): Record<string, unknown> | undefined {
  const entry = book(document)[index]
  return isObject(entry) ? entry : undefined
}
