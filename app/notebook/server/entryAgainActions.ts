'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { entryAt, writerOf } from '../../../lib/forms/book.ts'
import { standsAgain } from '../../../lib/forms/enteredTwice.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'
import { againRefusals } from '../../../lib/words/againText.ts'
import { pressRefusals } from '../../../lib/words/pressText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { enterEntry } from './enterEntry.ts'
import { pressFields } from './pressFields.ts'

const schema = z.object({
  index: z
    .string()
    .regex(/^[0-9]{1,9}$/)
    .transform(Number),
  fingerprint: z.string().regex(/^[0-9a-f]{64}$/),
})

/**
 * Enters what the household took back once more, as it stood: the entry that was taken back stays as it is, since nothing in
 * the book is ever undone. All that is asked of a new entry is asked of it, but for what was meant the first time already. Once it
 * stands again, a second press on the same form (two tabs, a lost answer) enters nothing.
 */
export async function enterAgain(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = schema.safeParse(pressFields(form))
  if (!read.success) return { refused: pressRefusals.unreadable }
  const { index, fingerprint } = read.data
  const stored = await findNotebook(notebookId)
  const document = stored ? (JSON.parse(stored.document) as NotebookDocument) : {}
  const draft = { ...entryAt(document, index), earlierIsMeant: true, ownIsOurs: true }
  const answer = await enterEntry(notebookId, household, draft, (standing) => {
    const entry = entryAt(standing, index)
    if (entry === undefined || fingerprintOf(entry) !== fingerprint) return gone
    if (!('struck' in entry) || writerOf(entry) !== household) return gone
    return standsAgain(standing, index) ? stands : undefined
  })
  if ('saved' in answer) redirect(`/notebook/${notebookId}/money`)
  return {
    refused: 'faults' in answer ? answer.faults.map(({ message }) => message).join(' ') : againRefusals.gone,
  }
}

const gone = { faults: [{ path: '', message: againRefusals.gone }] }
const stands = { faults: [{ path: '', message: againRefusals.stands }] }
