import type { Notebook } from '../agreement/notebook.ts'
import { fromTakeOff, offeredLines } from './offeredLines.ts'
import type { ItemAt } from './postLayout.ts'
import type { TakeOff } from './takeOff.ts'

/**
 * The sections and gates whose cost lines were all typed by hand while the take-off offers quantities of its own for them: what
 * is priced does not follow what is worked out, and the two may name other quantities for the same thing. In their order.
 */
export function typedBesideTakeOff(notebook: Notebook, found: TakeOff): readonly ItemAt[] {
  const offered = offeredLines(found)
  return (['sections', 'gates'] as const).flatMap((list) =>
    notebook[list].flatMap(({ materials }, index) =>
      materials.length > 0 &&
      !materials.some(fromTakeOff) &&
      offered.some(({ item }) => item.list === list && item.index === index)
        ? [{ list, index }]
        : [],
    ),
  )
}
