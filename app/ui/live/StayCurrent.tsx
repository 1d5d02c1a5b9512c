'use client'

import { usePathname, useRouter } from 'next/navigation'
import { useEffect, useRef, useState } from 'react'
import { liveWords } from '../../../lib/words/liveText.ts'

type Stands = { pulse: string; by?: 'a' | 'b'; otherIsHere: boolean }

/**
 * Keeps a page current while it is open: what the other household changes is fetched as soon as the server says so, and
 * whether it has the same page open is told. Without a connection the page says nothing new and loses nothing; the browser
 * asks again by itself.
 */
export function StayCurrent({
  home,
  pulse,
  household,
  otherName,
}: {
  /** The notebook's address. */
  home: string
  /** Where the notebook stood when this page was made. */
  pulse: string
  household: 'a' | 'b'
  otherName: string
}) {
  const router = useRouter()
  const path = usePathname() ?? ''
  const at = path.startsWith(home) ? path.slice(home.length).replace(/^\//, '') : ''
  const [otherIsHere, setOtherIsHere] = useState(false)
  const [changed, setChanged] = useState(false)
  const shown = useRef(pulse)
  useEffect(() => {
    shown.current = pulse
  }, [pulse])

  useEffect(() => {
    const source = new EventSource(`${home}/live?at=${encodeURIComponent(at)}`)
    source.addEventListener('stands', (event) => {
      const stands = JSON.parse(event.data) as Stands
      setOtherIsHere(stands.otherIsHere)
      if (stands.pulse === shown.current) return
      shown.current = stands.pulse
      if (stands.by !== undefined && stands.by !== household) setChanged(true)
      router.refresh()
    })
    return () => source.close()
  }, [home, at, household, router])

  useEffect(() => {
    if (!changed) return
    const soon = setTimeout(() => setChanged(false), 20_000)
    return () => clearTimeout(soon)
  }, [changed])

  return (
    <div className="stay-current" role="status">
      {otherIsHere ? <p>{liveWords.hereToo(otherName)}</p> : null}
      {changed ? <p>{liveWords.changed(otherName)}</p> : null}
    </div>
  )
}
