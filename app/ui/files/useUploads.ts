'use client'

import { useRef, useState } from 'react'
import { fileRefusalText } from '../../../lib/words/fileText.ts'
import { type About, sendFile } from './sendFile.ts'

export type Upload = {
  readonly key: string
  readonly name: string
  readonly standing: 'waiting' | 'sending' | 'checking' | 'added' | 'stopped' | 'refused'
  /** How much of it has been sent, from 0 to 1. */
  readonly fraction: number
  readonly refused?: string
}

export type UploadsHold = {
  readonly uploads: readonly Upload[]
  readonly busy: boolean
  /** Sends files one after the other; resolves with how many were added. */
  readonly start: (files: readonly File[], about: About) => Promise<number>
  readonly stop: (key: string) => void
}

let count = 0

export function useUploads(address: string, largest: number): UploadsHold {
  const [uploads, setUploads] = useState<readonly Upload[]>([])
  const stops = useRef(new Map<string, AbortController>())
  const busy = useRef(false)

  const put = (key: string, next: Partial<Upload>) =>
    setUploads((all) => all.map((one) => (one.key === key ? { ...one, ...next } : one)))

  const one = async (key: string, file: File, about: About): Promise<boolean> => {
    const stop = stops.current.get(key) ?? new AbortController()
    if (!stop.signal.aborted && file.size > largest) {
      const refusal = { kind: 'too-large', limit: largest, bytes: file.size } as const
      put(key, { standing: 'refused', refused: fileRefusalText(file.name, refusal) })
      return false
    }
    if (!stop.signal.aborted) put(key, { standing: 'sending' })
    const sent = await sendFile(
      address,
      file,
      about,
      (fraction) => put(key, { fraction, standing: fraction < 1 ? 'sending' : 'checking' }),
      stop.signal,
    )
    if ('stopped' in sent) put(key, { standing: 'stopped' })
    else if ('refused' in sent) put(key, { standing: 'refused', refused: sent.refused })
    else put(key, { standing: 'added', name: sent.added })
    return 'added' in sent
  }

  return {
    uploads,
    busy: uploads.some(({ standing }) => ['waiting', 'sending', 'checking'].includes(standing)),
    start: async (files, about) => {
      if (busy.current) return 0
      busy.current = true
      const turns = files.map((file) => {
        count += 1
        return { key: `upload-${count}`, file }
      })
      stops.current = new Map(turns.map(({ key }) => [key, new AbortController()]))
      setUploads(turns.map(({ key, file }) => ({ key, name: file.name, standing: 'waiting', fraction: 0 })))
      let added = 0
      for (const { key, file } of turns) if (await one(key, file, about)) added += 1
      busy.current = false
      return added
    },
    stop: (key) => stops.current.get(key)?.abort(),
  }
}
