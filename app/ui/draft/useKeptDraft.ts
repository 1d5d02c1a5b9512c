'use client'

import { useEffect, useEffectEvent, useRef, useState } from 'react'
import { browserShelf, forgetKept, type KeptDraft, keptName, readKept, writeKept } from './keptDraft.ts'
import type { useDraftState, Version } from './useDraftState.ts'

/**
 * Lets the draft wait in the browser while it is not saved, and brings it back when the page is opened again. `restore`
 * is called once, with what waited.
 */
export function useKeptDraft(
  owner: string | undefined,
  form: string,
  state: ReturnType<typeof useDraftState>,
  restore: (kept: KeptDraft) => void,
) {
  const [looked, setLooked] = useState(false)
  /** False where the browser keeps nothing. */
  const [keeps, setKeeps] = useState(owner !== undefined)
  const name = useRef<string>(undefined)
  /** The draft that was sent and not answered, as text. */
  const unanswered = useRef<string>(undefined)
  /** The draft that arrived while the page is about to go: it waits no more. */
  const over = useRef<unknown>(undefined)

  const look = useEffectEvent(() => {
    if (owner === undefined) return
    name.current = keptName(owner, `${window.location.pathname}${window.location.search}`, form)
    const shelf = browserShelf()
    const kept = shelf && readKept(shelf, name.current)
    if (kept === undefined) return
    if (kept.sent) unanswered.current = JSON.stringify(kept.draft)
    restore(kept)
  })
  useEffect(() => {
    look()
    setLooked(true)
  }, [])

  const { draft, unsaved, kept: opened } = state
  useEffect(() => {
    const shelf = browserShelf()
    if (!looked || name.current === undefined || draft === over.current) return
    if (!unsaved) {
      if (shelf !== undefined) forgetKept(shelf, name.current)
      return
    }
    const kept = { draft, opened, at: Date.now(), sent: unanswered.current === JSON.stringify(draft) }
    setKeeps(shelf !== undefined && writeKept(shelf, name.current, kept))
  }, [looked, draft, unsaved, opened])

  return {
    keeps,
    /** Whether this draft was sent already and no answer came. */
    wasSent: (sent: unknown) => unanswered.current === JSON.stringify(sent),
    /** No answer came to this draft. */
    markSent: (sent: unknown, version: Version) => {
      unanswered.current = JSON.stringify(sent)
      const shelf = browserShelf()
      if (shelf === undefined || name.current === undefined) return
      writeKept(shelf, name.current, { draft: sent, opened: version, at: Date.now(), sent: true })
    },
    /** The draft arrived and the page goes elsewhere; `more` keeps what was typed since. */
    arrived: (sent: unknown, more: boolean) => {
      unanswered.current = undefined
      const shelf = browserShelf()
      if (more || shelf === undefined || name.current === undefined) return
      over.current = sent
      forgetKept(shelf, name.current)
    },
    answered: () => {
      unanswered.current = undefined
    },
  }
}
