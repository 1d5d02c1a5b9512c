'use client'

import { useRouter } from 'next/navigation'
import { useEffect, useRef, useState, useTransition } from 'react'
import { failureOf } from './failure.ts'
import { formWords } from './formWords.ts'
import type { Conflict, SaveAnswer } from './saveAnswer.ts'
import type { useDraftState } from './useDraftState.ts'

export type SaveAction = (base: string, draft: unknown) => Promise<SaveAnswer>
export type RemoveAction = (base: string) => Promise<SaveAnswer>

/** What the last attempt came to, as far as the page must show it. */
export type Outcome =
  | { kind: 'none' }
  | { kind: 'saved'; text: string }
  | { kind: 'failed'; text: string }
  | { kind: 'gone'; text: string }
  | { kind: 'faults' }
  | { kind: 'conflict'; conflict: Conflict; removing: boolean }

/**
 * Sends the draft to the server action, one attempt at a time, and sorts the answers. `attempt` counts the answers, so
 * that the page can move the focus to each, also to the same one twice.
 */
export function useSaving(
  state: ReturnType<typeof useDraftState>,
  save: SaveAction,
  remove: RemoveAction | undefined,
  after: string | undefined,
) {
  const router = useRouter()
  const [saving, startSaving] = useTransition()
  const [outcome, setOutcome] = useState<Outcome>({ kind: 'none' })
  const [attempt, setAttempt] = useState(0)
  const busy = useRef(false)
  const latest = useRef(state.draft)
  useEffect(() => {
    latest.current = state.draft
  }, [state.draft])

  function settle(next: Outcome) {
    setOutcome(next)
    setAttempt((count) => count + 1)
  }

  function take(answer: SaveAnswer, sent: unknown, removing: boolean) {
    if ('saved' in answer) {
      const typedSince = !removing && latest.current !== sent
      state.keep({ draft: removing ? latest.current : sent, base: answer.base }, false)
      settle({ kind: 'saved', text: typedSince ? formWords.savedButMore : (answer.note ?? formWords.saved) })
      if (after !== undefined && !typedSince) router.push(after)
      router.refresh()
    } else if ('faults' in answer) {
      state.setFaults(answer.faults)
      settle({ kind: 'faults' })
    } else if ('conflict' in answer) {
      state.setFaults([])
      settle({ kind: 'conflict', conflict: answer.conflict, removing })
    } else {
      settle({ kind: 'gone', text: answer.message })
    }
  }

  function send(base: string, removing: boolean) {
    if (busy.current) return
    busy.current = true
    const sent = state.draft
    startSaving(async () => {
      try {
        const answer = removing && remove !== undefined ? await remove(base) : await save(base, sent)
        startSaving(() => take(answer, sent, removing))
      } catch (error) {
        busy.current = false
        const text = formWords[failureOf(error)]
        startSaving(() => settle({ kind: 'failed', text }))
      } finally {
        busy.current = false
      }
    })
  }

  return {
    saving,
    outcome,
    attempt,
    saveNow: () => send(state.base, false),
    removeNow: () => send(state.base, true),
    writeOver: (conflict: Conflict, removing: boolean) => send(conflict.theirsBase, removing),
    takeTheirs: (conflict: Conflict) => {
      state.keep({ draft: conflict.theirs, base: conflict.theirsBase }, true)
      settle({ kind: 'saved', text: formWords.theirsLoaded })
      router.refresh()
    },
  }
}
