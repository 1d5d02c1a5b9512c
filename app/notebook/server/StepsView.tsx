import type { StepGroup } from '../../../lib/words/shareSteps.ts'
import { FoldedPart } from '../../ui/FoldedPart.tsx'
import { StepGroups } from './StepGroups.tsx'

/** Why: how figures come about, step by step, folded away until somebody asks. */
export function StepsView({ groups }: { groups: readonly StepGroup[] }) {
  return (
    <FoldedPart summary="Why: every step, to redo with a pencil">
      <StepGroups groups={groups} />
    </FoldedPart>
  )
}
