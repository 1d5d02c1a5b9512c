'use client'

import { useEffect, useRef } from 'react'

/** Begins a piece of work that can be stopped; leaving the page stops it as well. */
export function useStop(): { readonly begin: () => AbortSignal; readonly stop: () => void } {
  const running = useRef<AbortController | undefined>(undefined)
  useEffect(() => () => running.current?.abort(), [])
  return {
    begin: () => {
      running.current = new AbortController()
      return running.current.signal
    },
    stop: () => running.current?.abort(),
  }
}
