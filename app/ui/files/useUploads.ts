'use client'

import { useRef, useState } from 'react'
import { fileRefusalText } from '../../../lib/words/fileText.ts'
import { type About, sendFile, stopChecking } from './sendFile.ts'

export type Upload = {
  readonly key: string
  readonly name: string
  /** In bytes. */
  readonly size: number
  /** `checking`: all of it is sent; `stopping`: it was to be stopped after that, and the server says whether it was. */
  readonly standing: 'waiting' | 'sending' | 'checking' | 'stopping' | 'added' | 'stopped' | 'refused'
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

/** No other tab or device may have the same. (`randomUUID` is only where there is https.) */
const sendingName = () =>
  [...crypto.getRandomValues(new Uint32Array(4))].map((one) => one.toString(36)).join('-')

export function useUploads(address: string, largest: number): UploadsHold {
  const [uploads, setUploads] = useState<readonly Upload[]>([])
  const stops = useRef(new Map<string, AbortController>())
  const busy = useRef(false)

  const put = (key: string, next: (one: Upload) => Partial<Upload>) =>
    setUploads((all) => all.map((one) => (one.key === key ? { ...one, ...next(one) } : one)))

  const one = async (key: string, file: File, about: About): Promise<boolean> => {
    const stop = stops.current.get(key) ?? new AbortController()
    if (!stop.signal.aborted && file.size > largest) {
      const refusal = { kind: 'too-large', limit: largest, bytes: file.size } as const
      put(key, () => ({ standing: 'refused', refused: fileRefusalText(file.name, refusal) }))
      return false
    }
    if (!stop.signal.aborted) put(key, () => ({ standing: 'sending' }))
    const onSent = (fraction: number) =>
      put(key, ({ standing }) => ({
        fraction,
        standing: fraction < 1 ? 'sending' : standing === 'stopping' ? standing : 'checking',
      }))
    const sent = await sendFile(address, file, { ...about, sending: key }, onSent, stop.signal)
    if ('stopped' in sent) put(key, () => ({ standing: 'stopped' }))
    else if ('refused' in sent) put(key, () => ({ standing: 'refused', refused: sent.refused }))
    else put(key, () => ({ standing: 'added', name: sent.added }))
    return 'added' in sent
  }

  return {
    uploads,
    busy: uploads.some(({ standing }) => ['waiting', 'sending', 'checking', 'stopping'].includes(standing)),
    start: async (files, about) => {
      if (busy.current) return 0
      busy.current = true
      const turns = files.map((file) => ({ key: sendingName(), file }))
      stops.current = new Map(turns.map(({ key }) => [key, new AbortController()]))
      setUploads(
        turns.map(({ key, file: { name, size } }) => ({ key, name, size, standing: 'waiting', fraction: 0 })),
      )
      let added = 0
      for (const { key, file } of turns) if (await one(key, file, about)) added += 1
      busy.current = false
      return added
    },
    stop: (key) => {
      const standing = uploads.find((upload) => upload.key === key)?.standing
      if (standing !== 'checking') return stops.current.get(key)?.abort()
      // All of it is there: only the server knows whether it is kept by now, so the request goes on and tells.
      put(key, () => ({ standing: 'stopping' }))
      void stopChecking(address, key)
    },
  }
}
