import { type Household, households } from '../core/people/household.ts'
import { changeEntry, entryAt, writerOf } from './book.ts'
import { isObject, type NotebookDocument } from './readNotebook.ts'

/**
 * The document with its newest entry, where that is a payment between the households, as it stands once `by` has entered
 * it: said by the one who received it, it is confirmed; said by the one who paid, it waits for the other's word.
 */
export function withTransferEntered(document: NotebookDocument, by: Household, on: string): NotebookDocument {
  const newest = Array.isArray(document.contributions) ? document.contributions.length - 1 : -1
  const entry = entryAt(document, newest)
  if (entry?.kind !== 'transfer' || !households.some((one) => one === entry.household)) return document
  const { waits: _said, confirmed: _norThis, ...given } = entry
  return changeEntry(document, newest, () =>
    given.household === by ? { ...given, waits: true } : { ...given, confirmed: { on, by } },
  )
}

/** The document with a payment confirmed by the household that received it: from now on it counts. */
export function withTransferConfirmed(
  document: NotebookDocument,
  index: number,
  confirmed: { readonly on: string; readonly by: Household },
): NotebookDocument {
  return changeEntry(document, index, ({ waits: _over, ...entry }) => ({ ...entry, confirmed }))
}

/** Whether the other household than its writer has confirmed an entry: then one alone does not take it back. */
export function confirmedByOther(entry: Readonly<Record<string, unknown>>): boolean {
  return isObject(entry.confirmed) && entry.confirmed.by !== writerOf(entry)
}
