'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { minorUnits } from '../../../lib/core/amounts/money.ts'
import { confirmingRefusal } from '../../../lib/core/ledger/transfers.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { entryAt } from '../../../lib/forms/book.ts'
import { withTransferConfirmed } from '../../../lib/forms/transfers.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { booksRefusals } from '../../../lib/words/booksText.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { confirmingRefusalText } from '../../../lib/words/transferText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { editBooks, refusalOf } from './editBooks.ts'
import { pressFields } from './pressFields.ts'
import { today } from './today.ts'

const confirmSchema = z.object({
  index: z
    .string()
    .regex(/^(0|[1-9][0-9]{0,5})$/)
    .transform(Number),
  fingerprint: z.string().regex(/^[0-9a-f]{64}$/),
})

/**
 * Confirms a payment for the household that received it, which alone can, and once. The amount then counts. Why it can't
 * be is told before anything else: a payment that was confirmed in the meantime is no other entry than before.
 */
export async function confirmTransfer(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = confirmSchema.safeParse(pressFields(form))
  if (!read.success) return { refused: booksRefusals.unreadable }
  const { index, fingerprint } = read.data
  const answer = await editBooks(notebookId, household, (document, { notebook }) => {
    const entry = notebook.contributions[index]
    if (entry === undefined) return { refused: booksRefusals.changed }
    const refusal = confirmingRefusal(entry, household)
    if (refusal !== undefined) return { refused: confirmingRefusalText(refusal, entry, shareNames(notebook)) }
    if (fingerprintOf(entryAt(document, index)) !== fingerprint) return { refused: booksRefusals.changed }
    const amount = moneyWords(minorUnits(entry.amount, digitsOf(notebook)), notebook.currency)
    return {
      next: withTransferConfirmed(document, index, { on: today(), by: household }),
      detail: { books: 'confirmed', what: entry.note.trim() || entry.means.trim(), amount },
      about: { entry: index },
    }
  })
  return refusalOf(answer) ?? redirect(`/notebook/${notebookId}/money`)
}
