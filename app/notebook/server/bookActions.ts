'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { entryAt, strikeContribution } from '../../../lib/forms/book.ts'
import { hasEntered } from '../../../lib/forms/enteredTwice.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { takeBackRefusals } from '../../../lib/words/entryText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import type { SaveAnswer } from '../../ui/draft/saveAnswer.ts'
import { enterEntry } from './enterEntry.ts'
import { entryRecord } from './entryRecord.ts'
import { whyItStays } from './entryStays.ts'
import { pressFields } from './pressFields.ts'
import { readDraft, refusedDraft } from './readDraft.ts'
import { editDocument } from './savePart.ts'
import { today } from './today.ts'

/**
 * Enters what was given into the book. Entries are never edited: one that was wrong is taken back and entered anew.
 * What has not happened yet, and what was for a line that is gone, is refused; a day before the notebook is asked about.
 * `base` says how many entries there were when the form was opened: one that is sent `again`, because no answer came, is
 * entered only if it does not stand among those since.
 */
export async function enterContribution(
  notebookId: string,
  base: string,
  draft: unknown,
  again: unknown = false,
): Promise<SaveAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = readDraft.safeParse(draft)
  if (!read.success) return refusedDraft
  const answer = await enterEntry(notebookId, household, read.data, (document, next) =>
    again === true && hasEntered(next, document, entriesBefore(base)) ? { saved: true, base: '' } : undefined,
  )
  if ('saved' in answer) redirect(`/notebook/${notebookId}/money`)
  return answer
}

/** Of a base like `new 12`: 12. */
function entriesBefore(base: unknown): number {
  return Number(/^new ([0-9]{1,6})$/.exec(String(base))?.[1] ?? 0)
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
  if (!read.success) return { refused: takeBackRefusals.why }
  const { index, fingerprint, why } = read.data
  const answer = await editDocument(
    notebookId,
    household,
    (document) => {
      const entry = entryAt(document, index)
      const stays = entry && whyItStays(entry)
      if (stays !== undefined) return { faults: [{ path: '', message: stays }] }
      const isMeant = (one: unknown) => fingerprintOf(one) === fingerprint
      const struck = strikeContribution(document, index, { on: today(), by: household, why }, isMeant)
      if (struck === undefined) return { gone: true, message: '' }
      return { next: struck, ...entryRecord(struck, 'taken back', { index, by: household, why }) }
    },
    'also while closed',
  )
  if ('saved' in answer) redirect(`/notebook/${notebookId}/money`)
  if ('faults' in answer) return { refused: answer.faults.map(({ message }) => message).join(' ') }
  return { refused: takeBackRefusals.changed }
}
