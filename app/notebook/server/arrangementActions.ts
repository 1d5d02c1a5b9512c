'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { inFormatOrder } from '../../../lib/forms/parts.ts'
import { isObject, type NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import type { SaveAnswer } from '../../ui/draft/saveAnswer.ts'
import { quoteQuestions, totalQuestions } from './arrangementQuestions.ts'
import { readDraft, refusedDraft } from './readDraft.ts'
import { editDocument, removePart, savePart } from './savePart.ts'
import { today } from './today.ts'

const part = { part: 'arrangements' } as const
const baseSchema = z.string().max(200_000)

/** Begins the arrangements, so that from now on both mark them. Where they are begun already, it only leads there. */
export async function beginArrangements(
  notebookId: string,
  _previous: PressAnswer,
  _form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const answer = await editDocument(notebookId, household, (document) => ({
    next: 'arrangements' in document ? document : inFormatOrder({ ...document, arrangements: {} }),
  }))
  if ('faults' in answer) return { refused: answer.faults.map(({ message }) => message).join(' ') }
  redirect(`/notebook/${notebookId}/arrangements`)
}

/** Saves rates, tolerance and instalments. A total that is not what the plan asks for is asked about, with a tick. */
export async function saveArrangements(
  notebookId: string,
  base: string,
  draft: unknown,
): Promise<SaveAnswer> {
  await requireHousehold(notebookId)
  const read = z.object({ base: baseSchema, draft: readDraft }).safeParse({ base, draft })
  if (!read.success) return refusedDraft
  const { totalIsMeant, ...kept } = read.data.draft
  // A draft without them would take them out whole, which has a button of its own.
  if (!isObject(kept.arrangements)) return refusedDraft
  return savePart(notebookId, part, read.data.base, kept, (next, before) => [
    ...quoteQuestions(next, before, today()),
    ...(totalIsMeant === true ? [] : totalQuestions(next)),
  ])
}

/** Takes the arrangements out whole: then nobody has to mark them. */
export async function removeArrangements(notebookId: string, base: string): Promise<SaveAnswer> {
  await requireHousehold(notebookId)
  const read = baseSchema.safeParse(base)
  if (!read.success) return refusedDraft
  const answer = await removePart(notebookId, part, read.data, withoutArrangements)
  if ('saved' in answer) redirect(`/notebook/${notebookId}/arrangements`)
  return answer
}

function withoutArrangements(document: NotebookDocument): NotebookDocument {
  const { arrangements: _gone, ...rest } = document
  return rest
}
