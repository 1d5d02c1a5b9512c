'use client'

import { usePathname, useRouter } from 'next/navigation'
import { useEffect, useRef, useState } from 'react'
import { liveWords } from '../../../lib/words/liveText.ts'
import { isBeingFilledIn } from './isBeingFilledIn.ts'
import { useStands } from './useStands.ts'

/** How long buttons rest after the page has changed under somebody's finger, in milliseconds. */
const rest = 1500

/**
 * Keeps a page current while it is open: what the other household changes is fetched as soon as the server says so, and
 * whether it has the same page open is told. A page that is being filled in is left alone, and offers to be fetched. For a
 * moment after a change no button answers, so that nobody agrees to what came up under the finger.
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
  const stands = useStands(home, at)
  const [told, setTold] = useState<'nothing' | 'shown' | 'behind'>('nothing')
  /** Where the notebook stood when it was last fetched, or left alone on purpose. */
  const known = useRef(pulse)
  useEffect(() => {
    known.current = pulse
  }, [pulse])

  useEffect(() => {
    if (stands === undefined || stands.pulse === known.current) return
    known.current = stands.pulse
    const byOther = stands.by !== undefined && stands.by !== household
    if (isBeingFilledIn(document)) {
      if (byOther) setTold('behind')
      return
    }
    if (byOther) {
      setTold('shown')
      restButtons()
    }
    router.refresh()
  }, [stands, household, router])

  useEffect(() => {
    if (told !== 'shown') return
    const soon = setTimeout(() => setTold('nothing'), 20_000)
    return () => clearTimeout(soon)
  }, [told])

  return (
    <div className="stay-current" role="status" data-told={told}>
      {stands?.otherIsHere ? <p>{liveWords.hereToo(otherName)}</p> : null}
      {told === 'shown' ? <p>{liveWords.changed(otherName)}</p> : null}
      {told === 'behind' ? (
        <p>
          {liveWords.changedBehind(otherName)}{' '}
          <button
            type="button"
            className="button button-plain"
            onClick={() => {
              setTold('nothing')
              router.refresh()
            }}
          >
            {liveWords.show}
          </button>{' '}
          <span className="quiet">{liveWords.showHint}</span>
        </p>
      ) : null}
    </div>
  )
}

function restButtons(): void {
  const page = document.documentElement
  page.dataset.justChanged = ''
  setTimeout(() => {
    delete page.dataset.justChanged
  }, rest)
}
