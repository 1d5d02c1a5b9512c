'use client'

import { type ReactNode, useMemo, useRef, useState } from 'react'
import { AskFirst } from './AskFirst.tsx'
import { DraftContext, type DraftHold } from './draftContext.ts'
import { type Done, formWords } from './formWords.ts'
import { useDraftOwner } from './KeptDrafts.tsx'
import type { KeptDraft } from './keptDraft.ts'
import type { MergeSaved } from './merging.ts'
import { type Restored, RestoredNotice } from './RestoredNotice.tsx'
import { SaveBar } from './SaveBar.tsx'
import { SavingAnswer } from './SavingAnswer.tsx'
import type { Fault } from './saveAnswer.ts'
import { useAddressedField } from './useAddressedField.ts'
import { useDraftState } from './useDraftState.ts'
import { useKeptDraft } from './useKeptDraft.ts'
import { useLeaveGuard } from './useLeaveGuard.ts'
import { useReady } from './useReady.ts'
import { useSaveAfterPause, useSaveAsTyped } from './useSaveAsTyped.ts'
import { type RemoveAction, type SaveAction, useSaving } from './useSaving.ts'
import { useSendAgain } from './useSendAgain.ts'

/**
 * What a form sends: `part`, what stands already, over the fingerprint that is its base; `entry`, something new;
 * `entry known again`, something new of which the server knows a second sending; `signature`, which waits nowhere.
 */
export type Sends = 'part' | 'entry' | 'entry known again' | 'signature'

const nothingFound: readonly Fault[] = []

/**
 * A form over one plain object. The fields inside read and write the draft at their paths; Save hands the whole draft
 * to a server action together with `base`, the version it was made from. Whatever the answer, nothing typed is lost.
 */
export function DraftForm({
  initial,
  base,
  save,
  saveLabel = formWords.save,
  after,
  remove,
  removeLabel = 'Remove',
  removeQuestion = formWords.removeAsk,
  form = 'field',
  findings: arrivingFindings = nothingFound,
  sends = /^[0-9a-f]{64}$/.test(base) ? 'part' : 'entry',
  merge,
  children,
}: {
  initial: object
  base: string
  save: SaveAction
  saveLabel?: string | undefined
  /** Where to go once it is saved; without it the page is read afresh. */
  after?: string | undefined
  remove?: RemoveAction | undefined
  removeLabel?: string | undefined
  removeQuestion?: string | undefined
  /** Begins the ids of the fields: give each its own where a page has two forms. */
  form?: string | undefined
  /** What the saved version clashes with or lacks: shown at the fields that the paths name, refusing nothing. */
  findings?: readonly Fault[] | undefined
  /** Without it, told by its base: a fingerprint is that of a part. */
  sends?: Sends | undefined
  /** Brings the draft together with what somebody else saved meanwhile; without it one version is chosen as a whole. */
  merge?: MergeSaved | undefined
  children: ReactNode
}) {
  const ready = useReady()
  const done: Done = sends === 'signature' ? 'signed' : 'saved'
  const owner = useDraftOwner()
  const saved = { draft: initial, base }
  const state = useDraftState(saved, arrivingFindings)
  const [restored, setRestored] = useState<Restored>()
  const waiting = useKeptDraft(sends === 'signature' ? undefined : owner, form, state, restore)
  const merges = sends === 'part' ? merge : undefined
  const resends = sends === 'part' || sends === 'entry known again'
  const saving = useSaving({ state, waiting, save, remove, after, merge: merges, resends, done })
  useLeaveGuard(
    state.unsaved && !(saving.outcome.kind === 'saved' && after !== undefined),
    waiting.keeps ? formWords.leaveKept : formWords.leave,
  )
  useSendAgain(saving.outcome.kind === 'waits', saving.sendAgain)
  const [typedOn, turnTyped] = useSaveAsTyped()
  const stopped = ['conflict', 'choices', 'gone', 'waits'].includes(saving.outcome.kind)
  const asTyped = sends === 'part' && owner !== undefined
  useSaveAfterPause(asTyped && typedOn && state.unsaved && !stopped, state.draft, saving.saveQuietly)

  function restore(kept: KeptDraft) {
    if (JSON.stringify(kept.draft) === JSON.stringify(initial)) return
    setRestored({ at: kept.at, sent: kept.sent })
    if (kept.opened.base === base) state.load(kept.draft, saved)
    else {
      state.load(kept.draft, kept.opened)
      if (merges !== undefined) void saving.meetSince(kept.draft, kept.opened.draft, saved)
    }
  }

  const box = useRef<HTMLFormElement>(null)
  useAddressedField(box, form, ready)

  const { draft, kept, change, faults, findings, register } = state
  const hold = useMemo<DraftHold>(
    () => ({ draft, saved: kept.draft, change, faults, findings, register, form, ready }),
    [draft, kept.draft, change, faults, findings, register, form, ready],
  )
  return (
    <DraftContext value={hold}>
      <form
        className="draft-form"
        ref={box}
        method="post"
        data-unsaved={state.unsaved ? '' : undefined}
        noValidate
        onSubmit={(event) => {
          event.preventDefault()
          saving.saveNow()
        }}
      >
        <noscript>
          <p className="summary">{formWords.noScript}</p>
        </noscript>
        {restored === undefined || !(state.unsaved || saving.outcome.kind === 'none') ? null : (
          <RestoredNotice
            restored={restored}
            onPutBack={() => {
              const { draft: typed, kept } = state
              saving.leaveIt()
              state.load(initial, saved)
              return () => state.load(typed, kept)
            }}
          />
        )}
        <SavingAnswer saving={saving} state={state} form={form} done={done} />
        <div className="fields">{children}</div>
        <SaveBar
          saveLabel={saveLabel}
          outcome={saving.outcome}
          saving={saving.saving}
          unsaved={state.unsaved}
          ready={ready}
          done={done}
          asTyped={asTyped ? { on: typedOn, turn: turnTyped } : undefined}
        />
        {remove === undefined ? null : (
          <div className="remove-part">
            <AskFirst
              label={removeLabel}
              question={removeQuestion}
              disabled={!ready || saving.saving}
              onYes={saving.removeNow}
            />
          </div>
        )}
      </form>
    </DraftContext>
  )
}
