'use client'

import { useRouter } from 'next/navigation'
import { useEffect, useRef, useState, useTransition } from 'react'
import { chosen, type Side } from './chosen.ts'
import { type Failure, failureOf } from './failure.ts'
import { type Done, formWords } from './formWords.ts'
import type { MergeSaved, Merging } from './merging.ts'
import type { Conflict, SaveAnswer } from './saveAnswer.ts'
import type { useDraftState, Version } from './useDraftState.ts'
import type { useKeptDraft } from './useKeptDraft.ts'

/** `again`: the same was sent before and no answer came, so it may have arrived. */
export type SaveAction = (base: string, draft: unknown, again: boolean) => Promise<SaveAnswer>
export type RemoveAction = (base: string) => Promise<SaveAnswer>

/** What the last attempt came to, as far as the page must show it. */
export type Outcome =
  | { kind: 'none' }
  | { kind: 'saved'; text: string }
  | { kind: 'failed'; text: string }
  | { kind: 'gone'; text: string }
  | { kind: 'faults' }
  /** Not fit to be saved yet, while it is being typed. */
  | { kind: 'unfit'; text: string }
  /** Not answered: it is sent again by itself. */
  | { kind: 'waits'; sent: unknown; version: Version }
  | { kind: 'conflict'; conflict: Conflict; removing: boolean }
  /** Both sides changed the same: place by place one is to be chosen. */
  | { kind: 'choices'; conflict: Conflict; merging: Merging }

/** How a draft is sent: pressed or by itself, over which version, and what came in of theirs. */
type Sending = {
  readonly sent: unknown
  readonly version: Version
  readonly removing?: boolean
  readonly quiet?: boolean
  readonly together?: {
    readonly by: string | undefined
    readonly own: true | undefined
    readonly labels: readonly string[]
  }
}

/**
 * Sends the draft to the server action, one attempt at a time, and sorts the answers. `attempt` counts the answers, so
 * that the page can move the focus to each, also to the same one twice.
 */
export function useSaving({
  state,
  waiting,
  save,
  remove,
  after,
  merge,
  resends,
  done,
}: {
  state: ReturnType<typeof useDraftState>
  waiting: ReturnType<typeof useKeptDraft>
  save: SaveAction
  remove: RemoveAction | undefined
  after: string | undefined
  merge: MergeSaved | undefined
  /** Sending the same twice does no harm: it may be sent again by itself. */
  resends: boolean
  done: Done
}) {
  const router = useRouter()
  const [saving, startSaving] = useTransition()
  const [outcome, setOutcome] = useState<Outcome>({ kind: 'none' })
  const [attempt, setAttempt] = useState(0)
  const busy = useRef(false)
  const latest = useRef(state.draft)
  useEffect(() => {
    latest.current = state.draft
  }, [state.draft])

  function settle(next: Outcome, quiet = false) {
    setOutcome(next)
    if (!quiet) setAttempt((count) => count + 1)
  }

  function take(answer: SaveAnswer, { sent, removing = false, quiet = false, together }: Sending) {
    if ('saved' in answer) {
      const typedSince = !removing && latest.current !== sent
      waiting.arrived(sent, typedSince)
      state.keep({ draft: removing ? latest.current : sent, base: answer.base }, false)
      const note =
        together === undefined || together.labels.length === 0
          ? (answer.note ?? (quiet ? formWords.savedAt(timeNow()) : formWords.saved))
          : together.own
            ? formWords.ownTogether(together.labels.join('; '))
            : formWords.savedTogether(together.by, together.labels.join('; '))
      settle({ kind: 'saved', text: typedSince && !quiet ? formWords.savedButMore : note }, quiet)
      if (after !== undefined && !typedSince) router.push(after)
      router.refresh()
    } else if ('faults' in answer) {
      state.setFaults(answer.faults)
      settle(
        quiet ? { kind: 'unfit', text: formWords.unfit(answer.faults.length) } : { kind: 'faults' },
        quiet,
      )
    } else if ('conflict' in answer) {
      state.setFaults([])
      settle({ kind: 'conflict', conflict: answer.conflict, removing })
    } else {
      settle({ kind: 'gone', text: answer.message })
    }
  }

  /** Brings the draft together with what was saved meanwhile; what then is left to send, if nothing is left to choose. */
  async function meet(
    conflict: Conflict,
    opened: unknown,
    mine: () => unknown = () => latest.current,
  ): Promise<Sending | undefined> {
    if (merge === undefined) return undefined
    const merging = await merge(opened, mine(), conflict.theirs)
    const version = { draft: conflict.theirs, base: conflict.theirsBase }
    if (merging.clashes.length > 0) {
      startSaving(() => settle({ kind: 'choices', conflict, merging }))
      return undefined
    }
    const sent = merging.isTheirs ? conflict.theirs : merging.draft
    latest.current = sent
    state.load(sent, version)
    return { sent, version, together: { by: conflict.by, own: conflict.own, labels: merging.taken } }
  }

  async function attemptOnce(sending: Sending): Promise<void> {
    const { sent, version, removing = false } = sending
    const answer =
      removing && remove !== undefined
        ? await remove(version.base)
        : await save(version.base, sent, waiting.wasSent(sent))
    waiting.answered()
    if (!('conflict' in answer) || removing || merge === undefined || answer.conflict.words !== undefined) {
      startSaving(() => take(answer, sending))
      return
    }
    // An earlier attempt arrived, only its answer did not.
    const alone = await merge(version.draft, sent, answer.conflict.theirs)
    if (alone.isTheirs && alone.taken.length === 0) {
      startSaving(() => take({ saved: true, base: answer.conflict.theirsBase }, sending))
      return
    }
    const next = await meet(answer.conflict, version.draft)
    if (next === undefined) return
    if (next.sent === answer.conflict.theirs)
      startSaving(() => take({ saved: true, base: next.version.base }, next))
    else await attemptOnce({ ...next, quiet: sending.quiet ?? false })
  }

  function fail(why: Failure, { sent, version, removing = false }: Sending) {
    if (removing || !waiting.keeps) return settle({ kind: 'failed', text: formWords[why](done) })
    if (why === 'lost') waiting.markSent(sent, version)
    if (why === 'lost' && resends) return setOutcome({ kind: 'waits', sent, version })
    const text = { lost: formWords.lostKept, broke: formWords.broke(done), outdated: formWords.outdatedKept }[
      why
    ]
    return settle({ kind: 'failed', text })
  }

  function send(sending: Sending) {
    if (busy.current) return
    busy.current = true
    startSaving(async () => {
      try {
        await attemptOnce(sending)
      } catch (error) {
        busy.current = false
        const why = failureOf(error, () =>
          waiting.arrived(sending.sent, !sending.removing && latest.current !== sending.sent),
        )
        startSaving(() => fail(why, sending))
      } finally {
        busy.current = false
      }
    })
  }

  const asItStands = () => ({ sent: state.draft, version: state.kept })
  return {
    saving,
    outcome,
    attempt,
    saveNow: () => send(asItStands()),
    /** The same without taking the focus anywhere. */
    saveQuietly: () => send({ ...asItStands(), quiet: true }),
    sendAgain: () => {
      if (outcome.kind === 'waits') send({ sent: outcome.sent, version: outcome.version })
    },
    removeNow: () => send({ ...asItStands(), removing: true }),
    writeOver: (conflict: Conflict, removing: boolean) =>
      send({ ...asItStands(), version: { draft: conflict.theirs, base: conflict.theirsBase }, removing }),
    /** What is on the page is given up: nothing is left to send or to choose. */
    leaveIt: () => setOutcome({ kind: 'none' }),
    takeTheirs: (conflict: Conflict) => {
      state.keep({ draft: conflict.theirs, base: conflict.theirsBase }, true)
      settle({ kind: 'saved', text: formWords.theirsLoaded })
      router.refresh()
    },
    /** Saves what is on the page with one side's value at each place that both changed. */
    saveChosen: async (conflict: Conflict, sides: Readonly<Record<string, Side>>) => {
      if (merge === undefined) return
      // Afresh: more may have been typed since the choice came up.
      const merging = await merge(state.kept.draft, latest.current, conflict.theirs)
      if (merging.clashes.some(({ path }) => sides[path] === undefined))
        return settle({ kind: 'choices', conflict, merging })
      const sent = chosen(merging, sides)
      const version = { draft: conflict.theirs, base: conflict.theirsBase }
      latest.current = sent
      state.load(sent, version)
      send({ sent, version })
    },
    /** What waited in the browser meets what was saved since. */
    meetSince: async (mine: unknown, opened: unknown, since: Version) => {
      await meet({ theirs: since.draft, theirsBase: since.base, rows: [] }, opened, () => mine)
    },
  }
}

function timeNow(): string {
  return new Date().toTimeString().slice(0, 5)
}
