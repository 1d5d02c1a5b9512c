import type { ReactNode } from 'react'

/** Something long to read, folded away until asked for. */
export function FoldedPart({ summary, children }: { summary: ReactNode; children: ReactNode }) {
  return (
    <details className="workings">
      <summary>{summary}</summary>
      {children}
    </details>
  )
}
