'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { addContribution, contributionPath, strikeContribution } from '../../../lib/forms/book.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import type { SaveAnswer } from '../../ui/draft/saveAnswer.ts'
import { pressFields } from './pressFields.ts'
import { readDraft, refusedDraft } from './readDraft.ts'
import { editDocument } from './savePart.ts'

/** Enters what was given into the book. Entries are never edited: one that was wrong is taken back and entered anew. */
export async function enterContribution(
  notebookId: string,
  _base: string,
  draft: unknown,
): Promise<SaveAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = readDraft.safeParse(draft)
  if (!read.success) return refusedDraft
  const answer = await editDocument(
    notebookId,
    household,
    (document) => ({
      next: addContribution(document, read.data, household),
      prefix: contributionPath(document),
    }),
    'also while closed',
  )
  if ('saved' in answer) redirect(`/notebook/${notebookId}/money`)
  return answer
}

const strikeSchema = z.object({
  index: z.coerce.number().int().min(0),
  fingerprint: z.string(),
  why: z.string().trim().min(1).max(500),
})

/** Takes an entry back: it stays in the book, says who took it back and why, and counts as nothing. */
export async function takeEntryBack(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = strikeSchema.safeParse(pressFields(form))
  if (!read.success)
    return { refused: 'Why: needed, in a few words (at most 500 characters), such as “entered twice”.' }
  const { index, fingerprint, why } = read.data
  const on = new Date().toISOString().slice(0, 10)
  const answer = await editDocument(
    notebookId,
    household,
    (document) => {
      const struck = strikeContribution(
        document,
        index,
        { on, by: household, why },
        (entry) => fingerprintOf(entry) === fingerprint,
      )
      return struck === undefined ? { gone: true, message: '' } : { next: struck }
    },
    'also while closed',
  )
  if ('saved' in answer) redirect(`/notebook/${notebookId}/money`)
  return {
    refused:
      'This entry was changed or taken back in the meantime, or the other household wrote it. Load the page again.',
  }
}
