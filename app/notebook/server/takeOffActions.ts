'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { mergeOffered, offeredLines } from '../../../lib/core/takeoff/offeredLines.ts'
import { takenOver } from '../../../lib/core/takeoff/takenOver.ts'
import { takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { readPart, writePart } from '../../../lib/forms/parts.ts'
import { isObject, readDocument } from '../../../lib/forms/readNotebook.ts'
import { itemRefusals, pressRefusals, takeOffRefusals } from '../../../lib/words/pressText.ts'
import { quantityText } from '../../../lib/words/takeoff/quantityText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { pressFields } from './pressFields.ts'
import { editDocument } from './savePart.ts'
import { takenOverAddress } from './takenOverAddress.ts'

const offerSchema = z.object({ id: z.string().min(1).max(200_000) })

/**
 * Puts an item's worked-out quantities among its cost lines, to be priced. Lines that a person changed stay as they are;
 * lines that follow the take-off take the new quantity and keep their price. Leads to the lines, where it is told.
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
  let came = { added: 0, renewed: 0 }
  const answer = await editDocument(notebookId, household, (document) => {
    const item = readPart(document, part)
    const checked = readDocument(document)
    if (item === undefined || !checked.ok) return { gone: true, message: itemRefusals.removed }
    const { notebook } = checked.value
    const lines = offeredLines(takeOff(notebook))
      .filter(({ item: place }) => notebook[place.list][place.index]?.id === id)
      .map(({ from, name, quantity, unit }) => ({ from, what: quantityText(name), quantity, unit }))
    // Refused before anything is written: lines that it offered once stay as they are.
    if (lines.length === 0) return { gone: true, message: takeOffRefusals.nothingYet }
    const standing = Array.isArray(item.materials) ? item.materials.filter(isObject) : []
    const materials = mergeOffered(standing, lines) as Record<string, unknown>[]
    came = takenOver(standing, materials)
    return { next: writePart(document, part, { ...item, materials }, 'take-off') }
  })
  if ('faults' in answer) return { refused: answer.faults.map(({ message }) => message).join(' ') }
  if ('gone' in answer) return { refused: answer.message }
  redirect(takenOverAddress(notebookId, id, came))
}
