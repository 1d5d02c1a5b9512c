'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { editUndone, isBeside } from '../../../lib/forms/editUndone.ts'
import { pressRefusals } from '../../../lib/words/pressText.ts'
import { putBackRefusals } from '../../../lib/words/removedText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { pressFields } from './pressFields.ts'
import { editDocument } from './savePart.ts'
import { ownEdits } from './undoableEdits.ts'

const schema = z.object({
  edit: z
    .string()
    .regex(/^[1-9][0-9]{0,14}$/)
    .transform(Number),
})

/** Takes the household's own edit back, all of it, as a new edit: what stood before stands there again. */
export async function undoEdit(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = schema.safeParse(pressFields(form))
  if (!read.success) return { refused: pressRefusals.unreadable }
  const changes = (await ownEdits(notebookId, household, new Date())).get(read.data.edit)
  if (changes === undefined) return { refused: putBackRefusals['changed since'] }
  const answer = await editDocument(notebookId, household, (document) => {
    const undone = editUndone(document, changes)
    return 'next' in undone
      ? { ...undone, whole: changes.some(isBeside) }
      : { faults: [{ path: '', message: putBackRefusals[undone.not] }] }
  })
  if ('faults' in answer) return { refused: answer.faults.map(({ message }) => message).join(' ') }
  redirect(`/notebook/${notebookId}/changes`)
}
