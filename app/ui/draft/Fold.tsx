'use client'

import type { ReactNode } from 'react'
import { useUnfolded } from './useUnfolded.ts'

/**
 * Fields that few need, folded away. `about` says in a few words what stands in them, or what they are for. They are
 * unfolded where something in them has to be looked at.
 */
export function Fold({
  label,
  about,
  paths,
  open = false,
  children,
}: {
  label: ReactNode
  about?: ReactNode
  /** Where in the draft its fields are: `line.site`, `line.stations[2].angle`. */
  paths: readonly string[]
  /** How it is when the page is opened. */
  open?: boolean | undefined
  children: ReactNode
}) {
  const [unfolded, setUnfolded] = useUnfolded(paths, open)
  return (
    <details className="fold" open={unfolded} onToggle={(event) => setUnfolded(event.currentTarget.open)}>
      <summary>
        <span className="fold-label">{label}</span>
        {about === undefined ? null : <span className="fold-about">{about}</span>}
      </summary>
      <div className="fold-fields">{children}</div>
    </details>
  )
}
