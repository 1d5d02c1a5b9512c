'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { readerAddress } from '../../../lib/access/readerAccess.ts'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { isCalendarDay } from '../../../lib/core/amounts/calendarDay.ts'
import {
  makeReaderLink,
  type ReaderContent,
  readerContents,
  revokeReaderLink,
} from '../../../lib/store/readerLinks.ts'
import { pressRefusals } from '../../../lib/words/pressText.ts'
import { endOfDay, longestReader, longestReading, readerRefusals } from '../../../lib/words/readerText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import type { Fault, SaveAnswer } from '../../ui/draft/saveAnswer.ts'
import { pressFields } from './pressFields.ts'
import { readDraft, refusedDraft } from './readDraft.ts'
import { typedText } from './typedText.ts'

/** The address of a new link: shown this once, for the token is stored nowhere. */
export type MadeLink = { readonly address: string }

/** Makes a link for somebody who only reads. */
export async function makeReadersLink(
  notebookId: string,
  _base: string,
  draft: unknown,
): Promise<SaveAnswer | MadeLink> {
  const { household } = await requireHousehold(notebookId)
  const read = readDraft.safeParse(draft)
  if (!read.success) return refusedDraft
  const at = new Date()
  const asked = askedLink(read.data, at)
  if ('faults' in asked) return asked
  const { token } = await makeReaderLink({ notebookId, household, ...asked, at })
  return { address: readerAddress(token) }
}

type AskedLink = {
  readonly label: string
  readonly content: ReaderContent
  readonly expiresAt: Date
}

function askedLink(
  draft: Readonly<Record<string, unknown>>,
  at: Date,
): AskedLink | { readonly faults: Fault[] } {
  const label = typedText(draft.label).replace(/\s+/g, ' ')
  const content = readerContents.find((one) => one === draft.content)
  const day = typeof draft.through === 'string' ? draft.through : ''
  const faults: Fault[] = [
    ...(label === '' ? [{ path: 'label', message: readerRefusals.label }] : []),
    ...(label.length > longestReader
      ? [{ path: 'label', message: readerRefusals.labelTooLong(label.length) }]
      : []),
    ...(content === undefined ? [{ path: 'content', message: readerRefusals.content }] : []),
    ...dayFaults(day, at),
  ]
  return faults.length > 0 || content === undefined
    ? { faults }
    : { label, content, expiresAt: endOfDay(day) }
}

function dayFaults(day: string, at: Date): Fault[] {
  const path = 'through'
  if (!isCalendarDay(day)) return [{ path, message: readerRefusals.day }]
  const today = at.toISOString().slice(0, 10)
  const last = new Date(at.getTime() + longestReading * 86_400_000).toISOString().slice(0, 10)
  // Days as ISO 8601 writes them are in order as texts.
  if (day < today) return [{ path, message: readerRefusals.past }]
  return day > last ? [{ path, message: readerRefusals.tooFar(last) }] : []
}

const endingSchema = z.object({ id: z.string().regex(/^[0-9a-f-]{36}$/) })

/** Ends a reader's link at once and for good; either household may. */
export async function endReadersLink(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = endingSchema.safeParse(pressFields(form))
  if (!read.success) return { refused: pressRefusals.unreadable }
  await revokeReaderLink({ notebookId, id: read.data.id, household, at: new Date() })
  redirect(`/notebook/${notebookId}/readers`)
}
