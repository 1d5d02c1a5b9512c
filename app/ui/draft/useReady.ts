'use client'

import { useSyncExternalStore } from 'react'

const never = () => () => {}

/** False in the page as the server sent it, true once it has come to life in the browser. */
export function useReady(): boolean {
  return useSyncExternalStore(
    never,
    () => true,
    () => false,
  )
}
