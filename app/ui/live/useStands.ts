'use client'

import { useEffect, useState } from 'react'

/** Where a notebook stands, as the server tells it while a page is open. */
export type Stands = { pulse: string; by?: 'a' | 'b'; otherIsHere: boolean }

/** The newest word of the server about a notebook; undefined before the first. The browser asks again by itself. */
export function useStands(home: string, at: string): Stands | undefined {
  const [stands, setStands] = useState<Stands>()
  useEffect(() => {
    const source = new EventSource(`${home}/live?at=${encodeURIComponent(at)}`)
    source.addEventListener('stands', (event) => setStands(JSON.parse(event.data) as Stands))
    return () => source.close()
  }, [home, at])
  return stands
}
