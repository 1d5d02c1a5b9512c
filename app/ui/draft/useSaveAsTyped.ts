'use client'

import { useEffect, useEffectEvent, useSyncExternalStore } from 'react'
import { browserShelf } from './keptDraft.ts'

const name = 'mearing save as typed'
const changed = 'mearing-save-as-typed'

/** How long after the last key a draft is saved by itself, in milliseconds. */
const pause = 2000

function hear(told: () => void): () => void {
  window.addEventListener(changed, told)
  window.addEventListener('storage', told)
  return () => {
    window.removeEventListener(changed, told)
    window.removeEventListener('storage', told)
  }
}

function isOn(): boolean {
  try {
    return browserShelf()?.getItem(name) === 'yes'
  } catch {
    return false
  }
}

/** Whether this browser saves by itself what is typed, and how that is switched: for all its forms at once. */
export function useSaveAsTyped(): readonly [boolean, (on: boolean) => void] {
  const on = useSyncExternalStore(hear, isOn, () => false)
  const turn = (wanted: boolean) => {
    try {
      browserShelf()?.setItem(name, wanted ? 'yes' : 'no')
    } catch {
      // A browser that keeps nothing stays with the button.
    }
    window.dispatchEvent(new Event(changed))
  }
  return [on, turn]
}

/** Calls `save` two seconds after the draft last changed, while that is wanted. */
export function useSaveAfterPause(wanted: boolean, draft: unknown, save: () => void): void {
  const attempt = useEffectEvent(save)
  // biome-ignore lint/correctness/useExhaustiveDependencies: every change of the draft begins the pause anew
  useEffect(() => {
    if (!wanted) return
    const timer = setTimeout(() => attempt(), pause)
    return () => clearTimeout(timer)
  }, [wanted, draft])
}
