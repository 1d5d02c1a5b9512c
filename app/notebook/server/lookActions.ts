'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { haveSeen } from '../../../lib/store/looks.ts'
import { pressRefusals } from '../../../lib/words/pressText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { pressFields } from './pressFields.ts'

const seenSchema = z.object({ newest: z.string().regex(/^[0-9]{1,15}$/) })

/** Says that this household has seen what the other did, up to the entry that the page showed last. */
export async function haveSeenChanges(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = seenSchema.safeParse(pressFields(form))
  if (!read.success) return { refused: pressRefusals.unreadable }
  await haveSeen({ notebookId, household, newest: Number(read.data.newest), at: new Date() })
  redirect(`/notebook/${notebookId}`)
}
