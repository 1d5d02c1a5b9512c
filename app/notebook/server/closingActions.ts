'use server'

import { redirect } from 'next/navigation'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { editDocument } from './savePart.ts'

/** Takes the closing off the draft, so that the notebook can be amended. What was signed stays as it is. */
export async function openAgain(
  notebookId: string,
  _previous: PressAnswer,
  _form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const answer = await editDocument(
    notebookId,
    household,
    (document) => {
      const { closing: _off, ...next } = document
      return { next }
    },
    'also while closed',
  )
  if ('faults' in answer) return { refused: answer.faults.map((fault) => fault.message).join(' ') }
  redirect(`/notebook/${notebookId}/closing`)
}
