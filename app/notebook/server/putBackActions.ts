'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import { withItemPutBack } from '../../../lib/forms/itemPutBack.ts'
import { latestChanges } from '../../../lib/store/changes.ts'
import { pressRefusals } from '../../../lib/words/pressText.ts'
import { putBackRefusals } from '../../../lib/words/removedText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { pressFields } from './pressFields.ts'
import { editDocument } from './savePart.ts'

/** Puts a section, gate or common cost back that was removed, as the record has it, and goes to its page. */
export async function putItemBack(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = z.object({ id: z.string().min(1).max(200_000) }).safeParse(pressFields(form))
  if (!read.success) return { refused: pressRefusals.unreadable }
  const { id } = read.data
  const last = (await latestChanges(notebookId)).find((change) => change.itemKey === itemKey(id))
  const answer = await editDocument(notebookId, household, (document) => {
    const put = withItemPutBack(document, id, last?.before)
    return 'next' in put ? put : { faults: [{ path: '', message: putBackRefusals[put.not] }] }
  })
  if ('faults' in answer) return { refused: answer.faults.map(({ message }) => message).join(' ') }
  redirect(`/notebook/${notebookId}/item/${encodeURIComponent(id)}`)
}
