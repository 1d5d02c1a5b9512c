'use server'

import { z } from 'zod'
import { setUnitsCookie } from '../../../lib/access/sessionCookie.ts'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { pressRefusals } from '../../../lib/words/pressText.ts'
import { unitsSwitchWords } from '../../../lib/words/unitsText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { pressFields } from './pressFields.ts'
import { unitsToShow } from './shownUnits.ts'

/** Shows this browser the notebook's lengths in other units. The notebook stays as it is. */
export async function showLengthsIn(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  await requireHousehold(notebookId)
  const read = z.object({ units: z.enum(unitsToShow) }).safeParse(pressFields(form))
  if (!read.success) return { refused: pressRefusals.unreadable }
  await setUnitsCookie(notebookId, read.data.units)
  return { done: unitsSwitchWords[read.data.units].shown }
}
