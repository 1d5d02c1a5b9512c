'use server'

import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { entryAt, writerOf } from '../../../lib/forms/book.ts'
import { isObject, type NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'
import { againWords } from '../../../lib/words/againText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { enterContribution } from './bookActions.ts'
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
 * the book is ever undone. All that is asked of a new entry is asked of it, but for what was meant the first time already.
 */
export async function enterAgain(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = schema.safeParse(pressFields(form))
  if (!read.success) return { refused: 'This press could not be read. Load the page again.' }
  const stored = await findNotebook(notebookId)
  const document = stored ? (JSON.parse(stored.document) as NotebookDocument) : {}
  const entry = entryAt(document, read.data.index)
  if (!isObject(entry) || fingerprintOf(entry) !== read.data.fingerprint) return { refused: againWords.gone }
  if (!('struck' in entry) || writerOf(entry) !== household) return { refused: againWords.gone }
  const meant = { earlierIsMeant: true, ownIsOurs: true }
  const answer = await enterContribution(notebookId, 'new', { ...entry, ...meant })
  // Where it is entered, that has led to the book already.
  return 'faults' in answer
    ? { refused: answer.faults.map(({ message }) => message).join(' ') }
    : { refused: againWords.gone }
}
