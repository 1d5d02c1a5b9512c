'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import {
  hasThing,
  markThing,
  putThing,
  removeThing,
  thingAt,
  thingPath,
  thingWithoutMarks,
  unmarkThing,
} from '../../../lib/forms/books.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { booksRefusals } from '../../../lib/words/booksText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import type { SaveAnswer } from '../../ui/draft/saveAnswer.ts'
import { editBooks, refusalOf } from './editBooks.ts'
import { pressFields } from './pressFields.ts'
import { readDraft, refusedDraft } from './readDraft.ts'
import { thingFaults } from './thingFaults.ts'
import { today } from './today.ts'

/**
 * Writes down a tool, a leftover or salvage, or changes one: `base` is the fingerprint of the one that is changed, without
 * its marks, or "new". A change of what its marks are about takes them off. Sent `again`, because no answer came, it is
 * written down only if it had not arrived.
 */
export async function saveThing(
  notebookId: string,
  place: number | undefined,
  base: string,
  draft: unknown,
  again: unknown = false,
): Promise<SaveAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = z
    .object({ place: placeSchema.optional(), base: z.string().max(100), draft: readDraft })
    .safeParse({ place, base, draft })
  if (!read.success) return refusedDraft
  const wanting = thingFaults(read.data.draft, today())
  if (wanting.length > 0) return { faults: wanting }
  const answer = await editBooks(notebookId, household, (document) => {
    const { place: at, base: seen } = read.data
    if (again === true && hasThing(document, at, read.data.draft)) return { arrived: true }
    if (at === undefined ? seen !== 'new' : !isSame(document, at, seen))
      return { refused: booksRefusals.changed }
    const what = String(read.data.draft.what ?? '')
    return {
      next: putThing(document, at, read.data.draft),
      detail: { books: at === undefined ? 'thing' : 'thing changed', what },
      prefix: thingPath(document, at),
    }
  })
  if ('saved' in answer) redirect(`/notebook/${notebookId}/books#things`)
  return answer
}

const placeSchema = z.number().int().min(0).max(1_000_000)
const pressSchema = z.object({
  index: z
    .string()
    .regex(/^(0|[1-9][0-9]{0,5})$/)
    .transform(Number),
  fingerprint: z.string().regex(/^[0-9a-f]{64}$/),
})

/** Marks what a thing is worth and who keeps it: for the household that asks, never for the other. */
export async function markThingValue(
  id: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  return pressThing(id, form, 'thing marked', (document, index, household) =>
    markThing(document, index, { household, on: today() }),
  )
}

/** Takes the household's own mark off a thing. */
export async function takeThingMarkBack(
  id: string,
  _before: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  return pressThing(id, form, 'thing unmarked', unmarkThing)
}

/** Takes a thing off the list. It stays on record that it was there. */
export async function takeThingAway(
  id: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  return pressThing(id, form, 'thing taken away', removeThing)
}

async function pressThing(
  notebookId: string,
  form: FormData,
  books: string,
  change: (document: NotebookDocument, index: number, household: 'a' | 'b') => NotebookDocument,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = pressSchema.safeParse(pressFields(form))
  if (!read.success) return { refused: booksRefusals.unreadable }
  const { index, fingerprint } = read.data
  const answer = await editBooks(notebookId, household, (document) =>
    isSame(document, index, fingerprint)
      ? {
          next: change(document, index, household),
          detail: { books, what: String(thingAt(document, index)?.what ?? '') },
        }
      : { refused: booksRefusals.changed },
  )
  const refused = refusalOf(answer)
  if (refused) return refused
  redirect(`/notebook/${notebookId}/books#things`)
}

function isSame(document: NotebookDocument, index: number, fingerprint: string): boolean {
  const thing = thingAt(document, index)
  return thing !== undefined && fingerprintOf(thingWithoutMarks(thing)) === fingerprint
}
