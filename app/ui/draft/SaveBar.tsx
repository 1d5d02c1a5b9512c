'use client'

import { formWords } from './formWords.ts'
import type { Outcome } from './useSaving.ts'

function standing(outcome: Outcome, saving: boolean, unsaved: boolean): string {
  if (saving) return formWords.saving
  if (outcome.kind === 'failed') return outcome.text
  if (unsaved)
    return outcome.kind === 'saved' && outcome.text === formWords.savedButMore
      ? outcome.text
      : formWords.unsaved
  return outcome.kind === 'saved' ? outcome.text : ''
}

/** The foot of a form, always in reach: Save, and where the draft stands. */
export function SaveBar({
  saveLabel,
  outcome,
  saving,
  unsaved,
  ready,
}: {
  saveLabel: string
  outcome: Outcome
  saving: boolean
  unsaved: boolean
  ready: boolean
}) {
  return (
    <div className="save-bar">
      <button type="submit" className="button button-main" disabled={!ready || saving}>
        {saveLabel}
      </button>
      <p className="save-standing" role="status" data-kind={outcome.kind}>
        {standing(outcome, saving, unsaved)}
      </p>
    </div>
  )
}
