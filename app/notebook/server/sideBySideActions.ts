'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { placesOf, spreadOf } from '../../../lib/core/shares/itemShares.ts'
import { shareUnder, wayNames } from '../../../lib/core/shares/shareUnder.ts'
import { readPart, writePart } from '../../../lib/forms/parts.ts'
import { readDocument } from '../../../lib/forms/readNotebook.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { itemRefusals, pressRefusals } from '../../../lib/words/pressText.ts'
import { wayRefusals } from '../../../lib/words/sideBySideText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { pressFields } from './pressFields.ts'
import { editDocument } from './savePart.ts'

const chooseSchema = z.object({
  id: z.string().min(1).max(200_000),
  way: z.enum(wayNames),
  fingerprint: z.string().regex(/^[0-9a-f]{64}$/),
})

/** Shares an item by another way, from figures that stand in it. Both marks come off it, as with any change. */
export async function chooseWay(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = chooseSchema.safeParse(pressFields(form))
  if (!read.success) return { refused: pressRefusals.unreadable }
  const { id, way, fingerprint } = read.data
  const part = { part: 'item', id } as const
  const answer = await editDocument(notebookId, household, (document) => {
    const current = readPart(document, part)
    const checked = readDocument(document)
    if (current === undefined || !checked.ok) return { gone: true, message: itemRefusals.removed }
    if (fingerprintOf(current) !== fingerprint) return { gone: true, message: wayRefusals.changed }
    const item = placesOf(checked.value.notebook).find((place) => place.item.id === id)?.item
    const laid = item && spreadOf(item)
    if (laid !== undefined) return { gone: true, message: wayRefusals.laid(laid) }
    const under = item === undefined ? undefined : shareUnder(item, way)
    if (under === undefined || 'missing' in under) return { gone: true, message: wayRefusals.notUsable }
    return { next: writePart(document, part, { ...current, share: under.share }) }
  })
  if ('saved' in answer) redirect(`/notebook/${notebookId}/side-by-side/${encodeURIComponent(id)}`)
  if ('gone' in answer) return { refused: answer.message }
  return {
    refused: 'faults' in answer ? answer.faults.map(({ message }) => message).join(' ') : wayRefusals.changed,
  }
}
