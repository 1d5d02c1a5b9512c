'use server'

import { redirect } from 'next/navigation'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { pressFields } from './pressFields.ts'
import { readImport } from './readImport.ts'
import { editDocument } from './savePart.ts'

/** Puts a notebook file in the notebook's place. Refused with the path of every fault; then nothing is changed. */
export async function replaceByFile(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = await readImport(pressFields(form))
  if (!read.ok) return { refused: read.refused }
  const answer = await editDocument(notebookId, household, () => ({ next: read.value.document }))
  if ('faults' in answer) return { refused: answer.faults.map((fault) => fault.message).join('\n') }
  redirect(`/notebook/${notebookId}/record`)
}
