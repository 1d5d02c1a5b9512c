'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { isOfOther } from '../../../lib/core/ledger/entryRules.ts'
import type { Household } from '../../../lib/core/people/household.ts'
import { changeEntry, entryAt, moveSpentLine, writerOf } from '../../../lib/forms/book.ts'
import { bothMarked, withMark, withoutMark } from '../../../lib/forms/booksLists.ts'
import { lineOfValue } from '../../../lib/forms/entryDraft.ts'
import { isObject, type NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { booksRefusals } from '../../../lib/words/booksText.ts'
import { entryRefusals } from '../../../lib/words/entryText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { editBooks, refusalOf } from './editBooks.ts'
import { itemTitles } from './itemTitles.ts'
import { pressFields } from './pressFields.ts'
import { today } from './today.ts'

const index = z
  .string()
  .regex(/^(0|[1-9][0-9]{0,5})$/)
  .transform(Number)
const fingerprint = z.string().regex(/^[0-9a-f]{64}$/)
const moveSchema = z.object({ index, line: index, fingerprint, to: z.string().max(20_000) })

/**
 * Puts a part of an entry on another line of the plan, or, where no line is chosen, leaves it with its item as a whole.
 * Only the household that wrote the entry can.
 */
export async function moveEntryLine(
  id: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(id)
  const read = moveSchema.safeParse(pressFields(form))
  if (!read.success) return { refused: booksRefusals.unreadable }
  const { to } = read.data
  const line = lineOfValue(to)
  if (to !== '' && line === undefined) return { refused: booksRefusals.unreadable }
  const answer = await editBooks(id, household, (document, { isPlanned }) => {
    const entry = sameEntry(document, read.data)
    const lines = entry?.lines
    if (entry === undefined || !Array.isArray(lines) || read.data.line >= lines.length)
      return { refused: booksRefusals.changed }
    if (writerOf(entry) !== household) return { refused: booksRefusals.notYours }
    if (line !== undefined && !isPlanned(line)) return { refused: booksRefusals.gone }
    const entryFor = String(entry.for ?? '')
    if (line !== undefined && isOfOther(entryFor, line)) {
      const titleOf = itemTitles(document)
      return { refused: entryRefusals.otherItem(titleOf(line.item), titleOf(entryFor)) }
    }
    return {
      next: moveSpentLine(document, { entry: read.data.index, line: read.data.line }, line),
      detail: { books: 'moved', what: line?.what ?? '' },
    }
  })
  return refusalOf(answer) ?? redirect(`/notebook/${id}/books`)
}

const markSchema = z.object({ index, fingerprint })

/** Marks that the whole amount of goods in kind counts, above the lower of their values: for the household that asks. */
export async function markValuation(
  id: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  return pressValuation(id, form, 'valuation', (valuation, household) =>
    withMark(valuation, { household, on: today() }),
  )
}

/** Takes the household's own mark off the value of goods in kind, while it waits for the other's. */
export async function takeValuationBack(
  id: string,
  _before: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  return pressValuation(id, form, 'valuation back', withoutMark)
}

async function pressValuation(
  id: string,
  form: FormData,
  books: string,
  change: (valuation: Record<string, unknown>, household: Household) => Record<string, unknown>,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(id)
  const read = markSchema.safeParse(pressFields(form))
  if (!read.success) return { refused: booksRefusals.unreadable }
  const answer = await editBooks(id, household, (document) => {
    const entry = sameEntry(document, read.data)
    if (entry === undefined || !isObject(entry.valuation) || 'struck' in entry)
      return { refused: booksRefusals.changed }
    // Marked by both it counts whole: neither takes that back alone, and there is nothing left to mark.
    if (bothMarked(entry.valuation)) return { refused: booksRefusals.valueHeld }
    const valuation = change(entry.valuation, household)
    return {
      next: changeEntry(document, read.data.index, (one) => ({ ...one, valuation })),
      detail: { books, what: typeof entry.note === 'string' ? entry.note : '' },
      about: { entry: read.data.index },
    }
  })
  return refusalOf(answer) ?? redirect(`/notebook/${id}/books`)
}

function sameEntry(
  document: NotebookDocument,
  asked: { readonly index: number; readonly fingerprint: string },
): Record<string, unknown> | undefined {
  const entry = entryAt(document, asked.index)
  return entry !== undefined && fingerprintOf(entry) === asked.fingerprint ? entry : undefined
}
