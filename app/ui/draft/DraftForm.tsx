'use client'

import { type ReactNode, useMemo, useRef } from 'react'
import { AskFirst } from './AskFirst.tsx'
import { ConflictChoice } from './ConflictChoice.tsx'
import { DraftContext, type DraftHold } from './draftContext.ts'
import { ErrorSummary } from './ErrorSummary.tsx'
import { formWords } from './formWords.ts'
import { SaveBar } from './SaveBar.tsx'
import type { Fault } from './saveAnswer.ts'
import { useAddressedField } from './useAddressedField.ts'
import { useDraftState } from './useDraftState.ts'
import { useLeaveGuard } from './useLeaveGuard.ts'
import { useReady } from './useReady.ts'
import { type RemoveAction, type SaveAction, useSaving } from './useSaving.ts'

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
  children: ReactNode
}) {
  const ready = useReady()
  const state = useDraftState({ draft: initial, base }, arrivingFindings)
  const saving = useSaving(state, save, remove, after)
  useLeaveGuard(state.unsaved && !(saving.outcome.kind === 'saved' && after !== undefined))

  const box = useRef<HTMLFormElement>(null)
  useAddressedField(box, form, ready)

  const { draft, change, faults, findings, register } = state
  const hold = useMemo<DraftHold>(
    () => ({ draft, change, faults, findings, register, form, ready }),
    [draft, change, faults, findings, register, form, ready],
  )
  const { outcome, attempt } = saving
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
        {outcome.kind === 'faults' && faults.length > 0 ? (
          <ErrorSummary faults={faults} fields={state.fields.current} form={form} attempt={attempt} />
        ) : null}
        {outcome.kind === 'conflict' ? (
          <ConflictChoice
            conflict={outcome.conflict}
            removing={outcome.removing}
            waiting={saving.saving}
            attempt={attempt}
            onTakeTheirs={() => saving.takeTheirs(outcome.conflict)}
            onWriteOver={() => saving.writeOver(outcome.conflict, outcome.removing)}
          />
        ) : null}
        {outcome.kind === 'gone' ? (
          <section className="summary summary-faults" role="alert">
            <h2>{formWords.goneTitle}</h2>
            <p>{outcome.text}</p>
          </section>
        ) : null}
        <div className="fields">{children}</div>
        <SaveBar
          saveLabel={saveLabel}
          outcome={outcome}
          saving={saving.saving}
          unsaved={state.unsaved}
          ready={ready}
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
