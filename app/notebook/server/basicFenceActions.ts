'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { aboveChoices, basicFenceSums, heldAgainst, heldPots } from '../../../lib/core/shares/basicFence.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { basicTakeOff } from '../../../lib/core/takeoff/basicTakeOff.ts'
import { mergeOffered } from '../../../lib/core/takeoff/offeredLines.ts'
import { isObject } from '../../../lib/forms/readNotebook.ts'
import { basicFenceRefusals, holdRefusals } from '../../../lib/words/basicFenceText.ts'
import { pressRefusals } from '../../../lib/words/pressText.ts'
import { quantityText } from '../../../lib/words/takeoff/quantityText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { editSection } from './editSection.ts'
import { pressFields } from './pressFields.ts'

const itemSchema = z.object({
  id: z.string().min(1).max(200_000),
  fingerprint: z.string().regex(/^[0-9a-f]{64}$/),
})
const holdSchema = itemSchema.extend({
  pots: z.enum(heldPots),
  above: z.enum([...aboveChoices, '']).default(''),
})

const unread = { refused: pressRefusals.unreadable }

/** Writes the sums of a section's basic fence into its share, as `difference`. Both marks come off it, as with any change. */
export async function holdAgainstBasicFence(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = holdSchema.safeParse(pressFields(form))
  if (!read.success) return unread
  const { id, pots, above } = read.data
  const refusal = await editSection(
    notebookId,
    household,
    read.data,
    'hand',
    ({ section, notebook }, item) => {
      if (section.basicFence === undefined) return basicFenceRefusals.none
      if (above === '') return holdRefusals['who is asked']
      const digits = digitsOf(notebook)
      const sums = basicFenceSums(section.basicFence, digits)
      const held = heldAgainst(section.share, pots, above, sums, digits)
      return 'not' in held ? holdRefusals[held.not] : { ...item, share: held.share }
    },
  )
  return refusal ?? redirect(`/notebook/${notebookId}/item/${encodeURIComponent(id)}`)
}

/** Puts what the basic fence takes among its own cost lines, to be priced; they follow it as an item's lines do. */
export async function offerBasicQuantities(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = itemSchema.safeParse(pressFields(form))
  if (!read.success) return unread
  const { id } = read.data
  const refusal = await editSection(
    notebookId,
    household,
    read.data,
    'take-off',
    ({ notebook, index }, item) => {
      const lines = basicTakeOff(notebook, index).offered
      if (lines.length === 0) return basicFenceRefusals.nothingWorkedOut
      const basicFence = isObject(item.basicFence) ? item.basicFence : {}
      const standing = Array.isArray(basicFence.materials) ? basicFence.materials.filter(isObject) : []
      const worded = lines.map(({ from, name, quantity, unit }) => ({
        from,
        what: quantityText(name),
        quantity,
        unit,
      }))
      return { ...item, basicFence: { ...basicFence, materials: mergeOffered(standing, worded) } }
    },
  )
  return refusal ?? redirect(`/notebook/${notebookId}/basic-fence/${encodeURIComponent(id)}`)
}

/** Takes the basic fence out of a section; what was typed or taken over into its share stays there. */
export async function removeBasicFence(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = itemSchema.safeParse(pressFields(form))
  if (!read.success) return unread
  const { id } = read.data
  const refusal = await editSection(notebookId, household, read.data, 'hand', ({ section }, item) => {
    if (section.basicFence === undefined) return basicFenceRefusals.none
    const { basicFence: _gone, ...rest } = item
    return rest
  })
  return refusal ?? redirect(`/notebook/${notebookId}/item/${encodeURIComponent(id)}`)
}
