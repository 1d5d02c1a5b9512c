'use client'

import { useState } from 'react'
import { workWords } from '../../../lib/words/workText.ts'
import { askForWork } from './askForWork.ts'
import { LinkAtWork } from './LinkAtWork.tsx'
import { saveBy } from './saveBy.ts'
import { useStop } from './useStop.ts'
import type { SaidAtEnd } from './WorkAnswer.tsx'

const words = workWords.pack

type Standing = { readonly ready: number; readonly all: number } | 'begins'

/**
 * A link to the record pack, which takes a while to be made: with script it is made ready first, with how far that is and a
 * way to stop it, and then saved by the browser's own download; without, the link itself asks for it.
 */
export function PackLink({ href, children }: { href: string; children: string }) {
  const { begin, stop } = useStop()
  const [standing, setStanding] = useState<Standing>()
  const [said, setSaid] = useState<SaidAtEnd>()

  async function make() {
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

  const progress =
    standing === undefined
      ? undefined
      : standing === 'begins'
        ? { said: words.begins, fraction: undefined }
        : { said: words.making(standing.ready, standing.all), fraction: standing.ready / standing.all }
  return (
    <LinkAtWork href={href} label={words.label} progress={progress} said={said} onPress={make} onStop={stop}>
      {children}
    </LinkAtWork>
  )
}
