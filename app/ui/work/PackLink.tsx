'use client'

import { type MouseEvent, useState } from 'react'
import { workWords } from '../../../lib/words/workText.ts'
import { askForWork } from './askForWork.ts'
import { saveBy } from './saveBy.ts'
import { useStop } from './useStop.ts'
import { WorkProgress } from './WorkProgress.tsx'

const words = workWords.pack

type Standing = { readonly ready: number; readonly all: number } | 'begins'

/**
 * A link to the record pack, which takes a while to be made: with script it is made ready first, with how far that is and a
 * way to stop it, and then saved by the browser's own download; without, the link itself asks for it.
 */
export function PackLink({ href, children }: { href: string; children: string }) {
  const { begin, stop } = useStop()
  const [standing, setStanding] = useState<Standing>()
  const [said, setSaid] = useState<{ readonly text: string; readonly kind: 'done' | 'refused' }>()

  async function press(event: MouseEvent<HTMLAnchorElement>) {
    // Whoever opens it elsewhere means the plain link.
    if (event.ctrlKey || event.metaKey || event.shiftKey) return
    event.preventDefault()
    if (standing !== undefined) return
    setSaid(undefined)
    setStanding('begins')
    const ended = await askForWork(href, undefined, begin(), {
      onLine: ({ ready, all }) => {
        if (typeof ready === 'number' && typeof all === 'number') setStanding({ ready, all })
      },
    })
    setStanding(undefined)
    if (ended.kind === 'stopped') return setSaid({ text: words.stopped, kind: 'done' })
    if (ended.kind !== 'told') return setSaid({ text: workWords[ended.kind], kind: 'refused' })
    setSaid({ text: words.done(Number(ended.line.bytes)), kind: 'done' })
    const { token } = ended.line
    saveBy(typeof token === 'string' ? `${href}?ready=${encodeURIComponent(token)}` : href)
  }

  const begins = standing === 'begins'
  return (
    <>
      <a
        className="button button-plain"
        href={href}
        download
        aria-disabled={standing === undefined ? undefined : true}
        onClick={press}
      >
        {children}
      </a>
      {standing === undefined ? null : (
        <WorkProgress
          label={words.label}
          said={begins ? words.begins : words.making(standing.ready, standing.all)}
          fraction={begins ? undefined : standing.ready / standing.all}
          onStop={stop}
        />
      )}
      <span className="press-answer work-said" role="status" data-kind={said?.kind ?? 'done'}>
        {said?.text ?? ''}
      </span>
    </>
  )
}
