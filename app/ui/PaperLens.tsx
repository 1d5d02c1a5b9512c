'use client'

import { type KeyboardEvent, type ReactNode, useEffect, useRef, useState } from 'react'
import { useDragging } from './drawing/useDragging.ts'

/**
 * One page of a paper, with a press that shows it large enough to read on a phone: in a window of its own that is moved by
 * touch, wheel, mouse and arrow keys, and that Escape closes.
 */
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
  const press = useRef<HTMLButtonElement>(null)
  const box = useRef<HTMLElement>(null)
  const touched = useRef(false)
  useDragging(box)

  // The page grows or shrinks by a screen or two: the press stays where one looks, and has the focus.
  // biome-ignore lint/correctness/useExhaustiveDependencies: only a change of size asks for it
  useEffect(() => {
    if (!touched.current) return
    press.current?.focus({ preventScroll: true })
    press.current?.scrollIntoView({ block: 'start' })
  }, [large])

  function show(as: boolean) {
    touched.current = true
    setLarge(as)
  }

  function byKey(event: KeyboardEvent) {
    if (!large || event.key !== 'Escape') return
    event.preventDefault()
    show(false)
  }

  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: Escape closes it from wherever in it the focus is
    <div className="paper-lens" data-large={large ? '' : undefined} onKeyDown={byKey}>
      <button ref={press} type="button" className="button button-plain" onClick={() => show(!large)}>
        {large ? smaller : larger}
      </button>
      <section
        ref={box}
        className="paper-lens-box"
        aria-label={large ? label : undefined}
        tabIndex={large ? 0 : undefined}
      >
        {children}
      </section>
    </div>
  )
}
