'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import type { LineOf } from '../../../lib/core/agreement/notebook.ts'
import { lineFinder } from '../../../lib/core/ledger/findLine.ts'
import { plannedAgainstActual } from '../../../lib/core/ledger/plannedAgainstActual.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { markBought } from '../../../lib/forms/books.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { booksRefusals, linesOfItemWords } from '../../../lib/words/booksText.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { itemAnchor } from './account/openForAccountPage.ts'
import { linesToMark } from './books/linesToMark.ts'
import { editBooks, refusalOf } from './editBooks.ts'
import { pressFields } from './pressFields.ts'
import { today } from './today.ts'

const itemSchema = z.object({
  item: z.string().min(1).max(1000),
  fingerprint: z.string().regex(/^[0-9a-f]{64}$/),
})

/**
 * Marks every line of an item for which something was entered, at what it came to: for the household that asks, never for
 * the other, and only while all of them have come to what the household was shown.
 */
export async function markItemBought(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = itemSchema.safeParse(pressFields(form))
  if (!read.success) return { refused: booksRefusals.unreadable }
  const { item: id, fingerprint } = read.data
  const answer = await editBooks(notebookId, household, (document, { notebook }) => {
    const digits = digitsOf(notebook)
    const item = plannedAgainstActual(notebook, digits).items.find((one) => one.id === id)
    const lines = item === undefined ? [] : linesToMark(item, household, digits)
    if (item === undefined || lines.length === 0 || fingerprintOf(lines) !== fingerprint)
      return { refused: booksRefusals.changed }
    const find = lineFinder(notebook)
    const mark = { household, on: today() }
    const next = lines.reduce((marked, { path, amount, ...line }) => {
      const isMeant = (one: LineOf) => find(one)?.path === path
      return markBought(marked, line, isMeant, amount, mark)
    }, document)
    const title = itemTitle({ kind: item.kind, name: item.name, key: `item:${item.id}` })
    return { next, detail: { books: 'item bought', what: linesOfItemWords(title, lines.length) } }
  })
  return refusalOf(answer) ?? redirect(`/notebook/${notebookId}/books#${itemAnchor(id)}`)
}
