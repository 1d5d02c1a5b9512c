import { readUnitsCookie } from '../../../lib/access/sessionCookie.ts'
import type { Units } from '../../../lib/core/agreement/notebook.ts'

export const unitsToShow = ['ft-in', 'metric'] as const satisfies readonly Units[]

/**
 * The units in which this browser shows lengths: its own choice, else the notebook's. Those are part of what is signed,
 * so that a look in other units must not change them; nor does it change what was typed.
 */
export async function shownUnits(notebookId: string, agreed: Units): Promise<Units> {
  const asked = await readUnitsCookie(notebookId)
  return unitsToShow.find((units) => units === asked) ?? agreed
}
