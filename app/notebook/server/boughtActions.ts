'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import type { LineOf } from '../../../lib/core/agreement/notebook.ts'
import { minorUnits, moneyText } from '../../../lib/core/amounts/money.ts'
import { isNumber } from '../../../lib/core/amounts/typedNumber.ts'
import { actualsOf, nothingSpent } from '../../../lib/core/ledger/actual.ts'
import { lineFinder, lineName } from '../../../lib/core/ledger/findLine.ts'
import { marksByLine, noLineMarks } from '../../../lib/core/ledger/lineMarks.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { markBought, unmarkBought } from '../../../lib/forms/books.ts'
import { lineOfValue } from '../../../lib/forms/entryDraft.ts'
import { booksRefusals, lineTitle } from '../../../lib/words/booksText.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { editBooks, refusalOf } from './editBooks.ts'
import { pressFields } from './pressFields.ts'
import { today } from './today.ts'

const lineSchema = z
  .unknown()
  .transform(lineOfValue)
  .refine((line) => line !== undefined)
const markSchema = z.object({ line: lineSchema, amount: z.string().max(40) })

/** Marks a line as bought, or as worked, at what it came to: for the household that asks, never for the other. */
export async function markLineBought(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = markSchema.safeParse(pressFields(form))
  if (!read.success) return { refused: booksRefusals.unreadable }
  const { line, amount } = read.data as { line: LineOf; amount: string }
  const answer = await editBooks(notebookId, household, (document, { notebook }) => {
    const digits = digitsOf(notebook)
    const find = lineFinder(notebook)
    const found = find(line)
    if (found === undefined) return { refused: booksRefusals.gone }
    const actual = (actualsOf(notebook, digits, find).byPath.get(found.path) ?? nothingSpent).amount
    if (actual < 0n) return { refused: booksRefusals.belowZero }
    const words = moneyWords(actual, notebook.currency)
    if (!isNumber(amount, digits) || minorUnits(amount, digits) !== actual)
      return { refused: booksRefusals.moved(words) }
    const isMeant = (one: LineOf) => find(one)?.path === found.path
    const mark = { household, on: today() }
    return {
      next: markBought(document, lineName(found), isMeant, moneyText(actual, digits), mark),
      detail: { books: 'bought', what: lineTitle(found), amount: words },
    }
  })
  const refused = refusalOf(answer)
  if (refused) return refused
  redirect(`/notebook/${notebookId}/books`)
}

/** Takes the household's own mark off a line, while it waits for the other's: what both marked is not undone by one. */
export async function takeLineMarkBack(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = z.object({ line: lineSchema }).safeParse(pressFields(form))
  if (!read.success) return { refused: booksRefusals.unreadable }
  const line = read.data.line as LineOf
  const answer = await editBooks(notebookId, household, (document, { notebook }) => {
    const find = lineFinder(notebook)
    const found = find(line)
    if (found === undefined) return { refused: booksRefusals.gone }
    const digits = digitsOf(notebook)
    const { held, pending } = marksByLine(notebook, digits, find).get(found.path) ?? noLineMarks
    if (held !== undefined && pending[household] === undefined)
      return { refused: booksRefusals.held(moneyWords(held.amount, notebook.currency)) }
    const isMeant = (one: LineOf) => find(one)?.path === found.path
    return {
      next: unmarkBought(document, isMeant, household),
      detail: { books: 'unbought', what: lineTitle(found) },
    }
  })
  const refused = refusalOf(answer)
  if (refused) return refused
  redirect(`/notebook/${notebookId}/books`)
}
