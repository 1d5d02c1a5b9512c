import { isCalendarDay } from '../../../lib/core/amounts/calendarDay.ts'
import { entryObjections, isNothing } from '../../../lib/core/ledger/entryRules.ts'
import { type Household, otherHousehold } from '../../../lib/core/people/household.ts'
import { isObject, type NotebookDocument, readDocument } from '../../../lib/forms/readNotebook.ts'
import { findFile } from '../../../lib/store/storedFiles.ts'
import { entryObjectionText, entryRefusals } from '../../../lib/words/entryText.ts'
import { conversionRefusals } from '../../../lib/words/hoursText.ts'
import type { Fault } from '../../ui/draft/saveAnswer.ts'
import { itemTitles } from './itemTitles.ts'
import { typedText } from './typedText.ts'

/**
 * What stands against the newest entry of a document, beside the faults of the file. While there are any of those the
 * entry is judged by what of it can be read, so that whoever typed it is told everything at once.
 */
export function objectionsTo(
  document: NotebookDocument,
  known: Parameters<typeof entryObjections>[1],
): readonly Fault[] {
  const read = readDocument(document)
  const entry = read.ok ? read.value.notebook.contributions.at(-1) : readableOf(document)
  const titleOf = itemTitles(document)
  return entry === undefined
    ? []
    : entryObjections(entry, known).map((objection) => entryObjectionText(objection, titleOf))
}

function readableOf(document: NotebookDocument) {
  const typed: unknown = Array.isArray(document.contributions) ? document.contributions.at(-1) : undefined
  if (!isObject(typed)) return undefined
  const date = typedText(typed.date)
  // A day that is none is a fault of the file already.
  return isCalendarDay(date) ? { date, for: '', lines: [] } : undefined
}

/** A receipt's file has to be one of the notebook's that was not taken away. */
export async function missingReceipt(notebookId: string, file: unknown): Promise<readonly Fault[]> {
  if (typeof file !== 'string' || file === '') return []
  return (await findFile(notebookId, file)) === undefined
    ? [{ path: 'file', message: entryRefusals.receiptGone }]
    : []
}

/** A payment between the households says by what means it was made. */
export function missingMeans({ kind, means }: Readonly<Record<string, unknown>>): readonly Fault[] {
  if (kind !== 'transfer' || (typeof means === 'string' && means.trim() !== '')) return []
  return [{ path: 'means', message: entryRefusals.means }]
}

/** An entry is about something: hours where it is of hours, else money. What is no figure is a fault of the file. */
export function nothingGiven({ kind, amount, hours }: Readonly<Record<string, unknown>>): readonly Fault[] {
  const ofHours = kind === 'hours'
  if (!isNothing(typedText(ofHours ? hours : amount))) return []
  return [
    {
      path: ofHours ? 'hours' : 'amount',
      message: ofHours ? conversionRefusals.noHours : entryRefusals.noAmount,
    },
  ]
}

/**
 * Each household enters what it gave itself: what one writes in the other's name would count without the other's word. Only a
 * payment between them may be entered by its receiver, which by that confirms it.
 */
export function enteredForOther(
  { kind, household }: Readonly<Record<string, unknown>>,
  by: Household,
  names: Readonly<Record<Household, string>>,
): readonly Fault[] {
  const other = otherHousehold(by)
  if (kind === 'transfer' || household !== other) return []
  return [{ path: 'household', message: entryRefusals.onlyOwn(names[other]) }]
}
