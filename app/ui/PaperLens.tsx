'use client'

import { type ReactNode, useState } from 'react'

/** One page of a paper, with a press that shows it large enough to read on a phone: in a box of its own that scrolls. */
export function PaperLens({
  label,
  larger,
  smaller,
  children,
}: {
  label: string
  larger: string
  smaller: string
  children: ReactNode
}) {
  const [large, setLarge] = useState(false)
  return (
    <div className="paper-lens" data-large={large ? '' : undefined}>
      <button type="button" className="button button-plain" onClick={() => setLarge(!large)}>
        {large ? smaller : larger}
      </button>
      <section
        className="paper-lens-box"
        aria-label={large ? label : undefined}
        tabIndex={large ? 0 : undefined}
      >
        {children}
      </section>
    </div>
  )
}
