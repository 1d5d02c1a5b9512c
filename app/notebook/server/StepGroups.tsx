import type { StepGroup } from '../../../lib/words/shareSteps.ts'

/** Groups of numbered steps, each under its heading. */
export function StepGroups({ groups }: { groups: readonly StepGroup[] }) {
  return groups.map((group, at) => (
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
  ))
}
