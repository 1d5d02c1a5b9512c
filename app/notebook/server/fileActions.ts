'use server'

import { redirect } from 'next/navigation'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { faultText } from '../../../lib/words/faultText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { readImport } from './readImport.ts'
import { editDocument } from './savePart.ts'

/** Puts a notebook file in the notebook's place. Refused with the path of every fault; then nothing is changed. */
export async function replaceByFile(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = await readImport(form.get('file'))
  if (!read.ok)
    return { refused: read.faults.map((fault) => `${fault.path}: ${faultText(fault)}`).join('\n') }
  await editDocument(notebookId, household, () => ({ next: read.value.document }))
  redirect(`/notebook/${notebookId}/record`)
}
