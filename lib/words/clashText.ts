import type { Notebook } from '../core/agreement/notebook.ts'
import type { Clash } from '../core/boundary/clashes.ts'
import { otherHousehold } from '../core/people/household.ts'
import { householdName } from './labels.ts'
import { drawingNoteText } from './summary/drawingNoteText.ts'
import { itemTitle } from './summary/names.ts'

/** A clash along the line as a sentence. */
export function clashText(notebook: Notebook, clash: Clash): string {
  if (clash.kind !== 'gate-on-other-land') return drawingNoteText(notebook, clash)
  const gate = itemTitle('gate', clash.gate, notebook.gates[clash.gate]?.name ?? '')
  const [said, other] = [clash.said, otherHousehold(clash.said)].map((household) =>
    householdName(notebook, household),
  )
  return `${gate} is said to stand on the land of ${said}, but by the stations the fence stands there on the land of ${other}.`
}
