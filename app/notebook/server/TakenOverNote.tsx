import type { CostLine } from '../../../lib/core/agreement/notebook.ts'
import { linesFromTakeOff, type TakenOver } from '../../../lib/core/takeoff/takenOver.ts'
import { fromTakeOffWords, takenOverWords } from '../../../lib/words/takeoff/takenOverText.ts'
import { takenOverId } from './takenOverAddress.ts'

/** Said above an item's cost lines: what a press put there just now, what of it has no price yet, what is beside it. */
export function TakenOverNote({
  materials,
  just,
}: {
  materials: readonly CostLine[]
  just: TakenOver | undefined
}) {
  const standing = linesFromTakeOff(materials)
  if (standing === undefined) return null
  const sentences = [...(just ? [takenOverWords(just)] : []), ...fromTakeOffWords(standing)]
  if (sentences.length === 0) return null
  return (
    <div className="apart" role="note" id={takenOverId} tabIndex={-1}>
      {sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </div>
  )
}
