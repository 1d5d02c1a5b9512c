/** How an answer came about, one step a line, folded away until asked for. Nothing is shown where there are no steps. */
export function Workings({
  steps,
  summary = 'How this was worked out',
  open = false,
}: {
  steps: readonly string[]
  summary?: string | undefined
  open?: boolean | undefined
}) {
  if (steps.length === 0) return null
  return (
    <details className="workings" open={open}>
      <summary>{summary}</summary>
      <ol>
        {steps.map((step, at) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: two steps may read the same, and their order never changes
          <li key={at}>{step}</li>
        ))}
      </ol>
    </details>
  )
}
