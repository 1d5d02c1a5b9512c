'use client'

import { useId } from 'react'
import { type Done, formWords } from './formWords.ts'
import type { Outcome } from './useSaving.ts'

/** Where the draft stands, in a sentence; nothing where nothing was typed. */
function standing(outcome: Outcome, saving: boolean, unsaved: boolean, done: Done): string {
  if (outcome.kind === 'waits') return formWords.waits
  if (saving) return formWords.sending[done]
  if (outcome.kind === 'failed') return outcome.text
  if (unsaved) {
    const told =
      outcome.kind === 'unfit' || (outcome.kind === 'saved' && outcome.text === formWords.savedButMore)
    return told ? outcome.text : formWords.notYet[done]
  }
  return outcome.kind === 'saved' ? outcome.text : ''
}

/** As many letters stand in two lines beside the button on a phone. */
const besideButton = 36

/** The foot of a form, always in reach: Save, where the draft stands, and whether it is saved as it is typed. */
export function SaveBar({
  saveLabel,
  outcome,
  saving,
  unsaved,
  ready,
  done,
  asTyped,
}: {
  saveLabel: string
  outcome: Outcome
  saving: boolean
  unsaved: boolean
  ready: boolean
  done: Done
  /** Only where a form can be saved as it is typed. */
  asTyped?: { readonly on: boolean; readonly turn: (on: boolean) => void } | undefined
}) {
  const id = useId()
  // Where two versions wait for a choice, the button that makes it is the main one.
  const weight = outcome.kind === 'conflict' || outcome.kind === 'choices' ? 'plain' : 'main'
  const stands = standing(outcome, saving, unsaved, done)
  return (
    <div className="save-bar">
      <button type="submit" className={`button button-${weight}`} disabled={!ready || saving}>
        {saveLabel}
      </button>
      <p
        className="save-standing"
        role="status"
        data-kind={outcome.kind}
        data-long={stands.length > besideButton ? '' : undefined}
      >
        {stands}
      </p>
      {asTyped === undefined ? null : (
        <label className="save-as-typed" title={formWords.asTypedHint}>
          <input
            type="checkbox"
            checked={asTyped.on}
            disabled={!ready}
            aria-describedby={`${id}-hint`}
            onChange={(event) => asTyped.turn(event.target.checked)}
          />
          <span>{formWords.asTyped}</span>
          <span className={asTyped.on ? 'quiet' : 'only-read-out'} id={`${id}-hint`}>
            {formWords.asTypedHint}
          </span>
        </label>
      )}
    </div>
  )
}
