'use client'

import { useEffect, useRef } from 'react'
import { bringIntoSight } from './goTo.ts'

/**
 * Brings an element into the window, clear of what sticks to its edges, whenever `answer` is another one than before. What
 * is in sight already stays where it is; an answer that says nothing moves nothing.
 */
export function useInSight<Kind extends HTMLElement>(answer: unknown, says: boolean) {
  const place = useRef<Kind>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: an answer in the same words is another answer
  useEffect(() => {
    if (says && place.current !== null) bringIntoSight(place.current)
  }, [answer, says])
  return place
}
