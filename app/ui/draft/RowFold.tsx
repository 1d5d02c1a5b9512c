'use client'

import type { ReactNode } from 'react'
import { formWords } from './formWords.ts'
import { useUnfolded } from './useUnfolded.ts'

/**
 * The fields of one row, folded away under how the row reads, so that a long list can be read on a phone. A row with
 * nothing in it yet is open, and so is one in which something has to be looked at.
 */
export function RowFold({
  path,
  name,
  reading,
  open,
  children,
}: {
  /** Where the row is in the draft: `materials[2]`. */
  path: string
  /** What the row is called, for whoever hears the name of the fold alone. */
  name: string
  reading: ReactNode
  /** How it is when the row comes up. */
  open: boolean
  children: ReactNode
}) {
  const [unfolded, setUnfolded] = useUnfolded([path], open)
  return (
    <>
      {unfolded ? null : <p className="row-reading">{reading}</p>}
      <details
        className="row-fold"
        open={unfolded}
        onToggle={(event) => setUnfolded(event.currentTarget.open)}
      >
        <summary>
          {unfolded ? formWords.rowFold : formWords.rowOpen}
          <span className="only-read-out"> {name}</span>
        </summary>
        <div className="row-fold-fields">{children}</div>
      </details>
    </>
  )
}
