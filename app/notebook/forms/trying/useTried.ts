'use client'

import { useEffect, useState } from 'react'
import type { Notebook } from '../../../../lib/core/agreement/notebook.ts'
import {
  isTried,
  type moveKinds,
  nothingTried,
  plannedText,
  type Tried,
  type TriedEdit,
} from '../../../../lib/core/trying/tried.ts'

/** What is tried, kept in this browser alone, so that a page left by mistake loses nothing. */
export function useTried(notebookId: string, plan: Notebook) {
  const place = `mearing-tried-${notebookId}`
  const [tried, setTried] = useState<Tried>(nothingTried)
  const [leftOut, setLeftOut] = useState(false)
  const [loaded, setLoaded] = useState(false)

  useEffect(() => {
    const stored = storedTried(place)
    if (stored !== undefined) {
      const edits = stored.edits.filter((edit) => {
        const planned = plannedText(plan, edit)
        return planned !== undefined && planned !== edit.text
      })
      setLeftOut(edits.length < stored.edits.length)
      setTried({ ...stored, edits })
    }
    setLoaded(true)
    // Read once: what is typed afterwards is newer than what is stored.
  }, [place, plan])

  useEffect(() => {
    if (!loaded) return
    try {
      if (isTried(tried)) localStorage.setItem(place, JSON.stringify(tried))
      else localStorage.removeItem(place)
    } catch {
      // A browser that keeps nothing: then a page that is left loses what was tried, as every page does.
    }
  }, [place, tried, loaded])

  return { tried, setTried, leftOut }
}

function storedTried(place: string): Tried | undefined {
  try {
    const stored: unknown = JSON.parse(localStorage.getItem(place) ?? 'null')
    if (stored === null || typeof stored !== 'object') return undefined
    const { edits, moves } = stored as { edits?: unknown; moves?: Record<string, unknown> }
    const text = (kind: (typeof moveKinds)[number]) =>
      typeof moves?.[kind] === 'string' ? (moves[kind] as string) : ''
    return {
      edits: Array.isArray(edits) ? edits.filter(isEdit) : [],
      moves: { prices: text('prices'), hours: text('hours'), rates: text('rates') },
    }
  } catch {
    return undefined
  }
}

function isEdit(value: unknown): value is TriedEdit {
  if (value === null || typeof value !== 'object') return false
  const { item, field, text } = value as Record<string, unknown>
  return typeof item === 'string' && typeof field === 'string' && typeof text === 'string'
}
