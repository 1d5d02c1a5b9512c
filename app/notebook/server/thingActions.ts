'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { hasThing, putThing, thingAt, thingPath } from '../../../lib/forms/things.ts'
import { booksRefusals } from '../../../lib/words/booksText.ts'
import type { SaveAnswer } from '../../ui/draft/saveAnswer.ts'
import { editBooks } from './editBooks.ts'
import { readDraft, refusedDraft } from './readDraft.ts'
import { thingFaults } from './thingFaults.ts'
import { isSameThing } from './thingPress.ts'
import { today } from './today.ts'

const placeSchema = z.number().int().min(0).max(1_000_000)

/**
 * Writes down a tool, a leftover or salvage, or changes one: `base` is the fingerprint of the one that is changed, without
 * its marks, or "new". A change of what its marks are about takes them off; what both marked before counts until both mark
 * the change. Sent `again`, because no answer came, it is written down only if it had not arrived.
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
    const stands = at === undefined ? seen === 'new' : isSameThing(document, at, seen)
    if (!stands || (at !== undefined && thingAt(document, at)?.off !== undefined))
      return { refused: booksRefusals.changed }
    const what = String(read.data.draft.what ?? '')
    return {
      next: putThing(document, at, read.data.draft),
      detail: { books: at === undefined ? 'thing' : 'thing changed', what },
      about: { thing: at ?? -1 },
      prefix: thingPath(document, at),
    }
  })
  if ('saved' in answer) redirect(`/notebook/${notebookId}/books#things`)
  return answer
}
