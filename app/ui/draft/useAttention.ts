'use client'

import { useEffect, useRef } from 'react'
import { bringIntoSight } from './goTo.ts'

/**
 * Puts the focus on what an attempt to save came to, and brings its beginning into sight, with every attempt: it may come
 * to the same again. A browser left to itself shows the middle of what is longer than the window.
 */
export function useAttention(attempt: number) {
  const box = useRef<HTMLElement>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: the count is what asks for the focus
  useEffect(() => {
    if (box.current === null) return
    box.current.focus({ preventScroll: true })
    bringIntoSight(box.current)
  }, [attempt])
  return box
}
