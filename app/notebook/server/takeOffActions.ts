'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { mergeOffered, offeredLines } from '../../../lib/core/takeoff/offeredLines.ts'
import { takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { readPart, writePart } from '../../../lib/forms/parts.ts'
import { isObject, readDocument } from '../../../lib/forms/readNotebook.ts'
import { itemRefusals, pressRefusals, takeOffRefusals } from '../../../lib/words/pressText.ts'
import { quantityText } from '../../../lib/words/takeoff/quantityText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { pressFields } from './pressFields.ts'
import { editDocument } from './savePart.ts'

const offerSchema = z.object({ id: z.string().min(1).max(200_000) })

/**
 * Puts an item's worked-out quantities among its cost lines, to be priced. Lines that a person changed stay as they are;
 * lines that follow the take-off take the new quantity and keep their price.
 */
export async function offerQuantities(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = offerSchema.safeParse(pressFields(form))
  if (!read.success) return { refused: pressRefusals.unreadable }
  const { id } = read.data
  const part = { part: 'item', id } as const
  let offered = 0
  const answer = await editDocument(notebookId, household, (document) => {
    const item = readPart(document, part)
    const checked = readDocument(document)
    if (item === undefined || !checked.ok) return { gone: true, message: '' }
    const { notebook } = checked.value
    const lines = offeredLines(takeOff(notebook))
      .filter(({ item: place }) => notebook[place.list][place.index]?.id === id)
      .map(({ from, name, quantity, unit }) => ({ from, what: quantityText(name), quantity, unit }))
    offered = lines.length
    const standing = Array.isArray(item.materials) ? item.materials.filter(isObject) : []
    const materials = mergeOffered(standing, lines) as Record<string, unknown>[]
    return { next: writePart(document, part, { ...item, materials }, 'take-off') }
  })
  if ('faults' in answer) return { refused: answer.faults.map(({ message }) => message).join(' ') }
  if (!('saved' in answer)) return { refused: itemRefusals.removed }
  if (offered === 0) return { refused: takeOffRefusals.nothingYet }
  redirect(`/notebook/${notebookId}/item/${encodeURIComponent(id)}`)
}
