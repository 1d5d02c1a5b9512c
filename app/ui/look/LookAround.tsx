'use client'

import { createContext, type ReactNode, useContext, useEffect, useRef } from 'react'
import { useReady } from '../draft/useReady.ts'
import { useOpenLook } from './useOpenLook.ts'

const Opened = createContext<{ ready: boolean; open: string | undefined }>({ ready: false, open: undefined })

/**
 * A drawing with a look at each of its parts. A link to `#look-…` inside opens that look in place; Escape, the look's own
 * close and the browser's Back close it, and the part that was pressed has the focus again. Without script the address alone
 * opens it.
 */
export function LookAround({ children }: { children: ReactNode }) {
  const ready = useReady()
  const around = useRef<HTMLDivElement>(null)
  const open = useOpenLook(around)
  return (
    <Opened value={{ ready, open }}>
      <div ref={around} className="look-around" id="look-around">
        {children}
      </div>
    </Opened>
  )
}

/** One part looked at: there only while it is open. */
export function Look({ id, title, children }: { id: string; title: string; children: ReactNode }) {
  const { ready, open } = useContext(Opened)
  const section = useRef<HTMLElement>(null)
  const isOpen = open === id
  useEffect(() => {
    if (!isOpen) return
    section.current?.focus({ preventScroll: true })
    section.current?.scrollIntoView({ block: 'nearest' })
  }, [isOpen])
  if (ready && !isOpen) return null
  return (
    <section
      ref={section}
      id={id}
      className="look panel"
      data-open={isOpen || undefined}
      aria-labelledby={`${id}-title`}
      tabIndex={-1}
    >
      <div className="panel-head">
        <h2 id={`${id}-title`} className="panel-heading">
          {title}
        </h2>
        <a href="#look-around" className="button button-plain" data-close-look="">
          Close<span className="only-read-out"> and go back to the drawing</span>
        </a>
      </div>
      {children}
    </section>
  )
}
