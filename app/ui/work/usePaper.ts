'use client'

import { useRef, useState } from 'react'
import { workWords } from '../../../lib/words/workText.ts'
import { saveBy } from './saveBy.ts'
import { useStop } from './useStop.ts'
import type { SaidAtEnd } from './WorkAnswer.tsx'

const words = workWords.paper

/** A PDF that is there sooner is saved without a word about it, in milliseconds. */
const soon = 400

/** A PDF that is made when it is asked for and then saved: how far it is, what is said at its end, and the ways to begin and stop. */
export function usePaper(ask: (signal: AbortSignal) => Promise<Response>) {
  const { begin, stop } = useStop()
  const busy = useRef(false)
  const [standing, setStanding] = useState<{ readonly loaded: number; readonly all: number }>()
  const [said, setSaid] = useState<SaidAtEnd>()

  async function make() {
    if (busy.current) return
    busy.current = true
    setSaid(undefined)
    let late = false
    const timer = setTimeout(() => {
      late = true
      setStanding({ loaded: 0, all: 0 })
    }, soon)
    const signal = begin()
    try {
      const answer = await ask(signal)
      const blob = await whole(answer, (loaded, all) => {
        if (late) setStanding({ loaded, all })
      })
      if (!answer.ok) return setSaid({ text: await problem(answer, blob), kind: 'refused' })
      save(blob, nameIn(answer))
      if (late) setSaid({ text: words.done, kind: 'done' })
    } catch {
      setSaid(
        signal.aborted ? { text: words.stopped, kind: 'done' } : { text: workWords.lost, kind: 'refused' },
      )
    } finally {
      clearTimeout(timer)
      busy.current = false
      setStanding(undefined)
    }
  }

  const progress =
    standing === undefined
      ? undefined
      : {
          said: standing.loaded === 0 ? words.making : words.arriving(standing.loaded, standing.all),
          fraction: standing.all > 0 ? standing.loaded / standing.all : undefined,
        }
  return { progress, said, make, stop }
}

function save(blob: Blob, name: string): void {
  const address = URL.createObjectURL(blob)
  saveBy(address, name)
  // The download has its own hold on the bytes soon after; a browser that asks first may take a minute.
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}

/** All of an answer, and how much of it is there meanwhile. */
async function whole(answer: Response, hear: (loaded: number, all: number) => void): Promise<Blob> {
  const type = answer.headers.get('content-type') ?? ''
  const all = Number(answer.headers.get('x-mearing-bytes') ?? 0)
  const pieces: Uint8Array<ArrayBuffer>[] = []
  let loaded = 0
  const reader = answer.body?.getReader()
  for (;;) {
    const next = await reader?.read()
    if (next?.value === undefined) return new Blob(pieces, { type })
    pieces.push(next.value)
    loaded += next.value.length
    hear(loaded, all)
  }
}

/** What the server says in plain words, else that something went wrong. */
async function problem(answer: Response, blob: Blob): Promise<string> {
  return answer.headers.get('content-type')?.startsWith('text/plain') ? await blob.text() : workWords.broke
}

function nameIn(answer: Response): string {
  return /filename="([^"]+)"/.exec(answer.headers.get('content-disposition') ?? '')?.[1] ?? ''
}
