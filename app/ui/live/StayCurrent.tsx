'use client'

import { usePathname, useRouter } from 'next/navigation'
import { useEffect, useRef, useState } from 'react'
import { liveWords } from '../../../lib/words/liveText.ts'
import { isBeingFilledIn } from './isBeingFilledIn.ts'
import { useFocusBack } from './useFocusBack.ts'
import { useRoomAtTop } from './useRoomAtTop.ts'
import { useStands } from './useStands.ts'

/** How long buttons rest after the page has changed under somebody's finger, in milliseconds. */
const rest = 1500
/** How long it is told that the page shows a change already, in milliseconds. */
const shownFor = 20_000

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
    // Fetched since, as by saving.
    setTold((now) => (now === 'behind' ? 'nothing' : now))
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

  const box = useRef<HTMLDivElement>(null)
  useRoomAtTop(box, told !== 'nothing')
  const giveBack = useFocusBack(box)
  const putAway = () => {
    giveBack()
    setTold('nothing')
  }

  useEffect(() => {
    if (told !== 'shown') return
    // Not from under a hand that is about to press.
    const later = setInterval(() => {
      if (!box.current?.matches(':hover, :focus-within')) setTold('nothing')
    }, shownFor)
    return () => clearInterval(later)
  }, [told])

  // From wherever one types: the notice is far away for whoever goes by keyboard.
  useEffect(() => {
    if (told === 'nothing') return
    const byKey = (event: KeyboardEvent) => {
      if (event.key === 'Escape' && !event.defaultPrevented) putAway()
    }
    document.addEventListener('keydown', byKey)
    return () => document.removeEventListener('keydown', byKey)
  })

  return (
    <div className="stay-current" role="status" data-told={told} ref={box}>
      {stands?.otherIsHere ? <p>{liveWords.hereToo(otherName)}</p> : null}
      {told === 'nothing' ? null : (
        <>
          <p>{(told === 'shown' ? liveWords.changed : liveWords.changedBehind)(otherName)}</p>
          <div className="button-row">
            {told === 'shown' ? null : (
              <button
                type="button"
                className="button button-plain"
                onClick={() => {
                  putAway()
                  router.refresh()
                }}
              >
                {liveWords.show}
              </button>
            )}
            <button type="button" className="button button-quiet" onClick={putAway}>
              {liveWords.putAway}
            </button>
          </div>
        </>
      )}
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
