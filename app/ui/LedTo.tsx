'use client'

import { type ReactNode, useEffect, useRef, useState } from 'react'
import { goTo } from './draft/goTo.ts'

/** For how long a press counts as what changed the page; a signature takes a while where a locked copy is made. */
const soon = 30_000

/**
 * Leads back here whoever pressed something on the page that changed `mark`: the form that was pressed is gone then, and
 * with it the focus. It goes to what has `data-led-to`, else to the first heading, and `says` is said below. What the
 * other household does changes it too, and leads nobody anywhere.
 */
export function LedTo({
  mark,
  says = '',
  children,
}: {
  mark: string
  says?: string | undefined
  children: ReactNode
}) {
  const [led, setLed] = useState(false)
  const place = useRef<HTMLDivElement>(null)
  const known = useRef(mark)
  const pressed = useRef(0)
  useEffect(() => {
    const note = () => {
      pressed.current = Date.now()
    }
    document.addEventListener('submit', note)
    return () => document.removeEventListener('submit', note)
  }, [])
  useEffect(() => {
    if (known.current === mark) return
    known.current = mark
    if (place.current === null || Date.now() - pressed.current > soon) return
    pressed.current = 0
    const told = place.current.querySelector<HTMLElement>('[data-led-to]')
    const goal = told ?? place.current.querySelector<HTMLElement>('h2') ?? place.current
    goal.setAttribute('tabindex', '-1')
    goTo(goal)
    setLed(true)
  }, [mark])
  return (
    <div ref={place} className="led-to">
      {children}
      {says === '' ? null : (
        <p className="press-answer" role="status">
          {led ? says : ''}
        </p>
      )}
    </div>
  )
}
