import type { StepGroup } from '../../../lib/words/shareSteps.ts'
import { FoldedPart } from '../../ui/FoldedPart.tsx'

/** Why: how figures come about, step by step, folded away until somebody asks. */
export function StepsView({ groups }: { groups: readonly StepGroup[] }) {
  return (
    <FoldedPart summary="Why: every step, to redo with a pencil">
      {groups.map((group, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the groups never change their order
        <div className="step-group" key={at}>
          <p>
            <strong>{group.heading}</strong>
          </p>
          <ol>
            {group.steps.map((step, stepAt) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: two steps may read the same, and their order never changes
              <li key={stepAt}>{step}</li>
            ))}
          </ol>
        </div>
      ))}
    </FoldedPart>
  )
}
