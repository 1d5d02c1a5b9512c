'use client'

import { useState } from 'react'
import type { Side } from './chosen.ts'
import { formWords } from './formWords.ts'
import type { MergeClash, Merging } from './merging.ts'
import type { Conflict } from './saveAnswer.ts'
import { useAttention } from './useAttention.ts'

const sides: readonly Side[] = ['theirs', 'mine']

/** What two people changed differently, side by side, and a choice for each; what only one changed is named. */
export function MergeChoice({
  conflict,
  merging,
  form,
  waiting,
  attempt,
  onTakeTheirs,
  onSave,
}: {
  conflict: Conflict
  merging: Merging
  form: string
  waiting: boolean
  attempt: number
  onTakeTheirs: () => void
  onSave: (sides: Readonly<Record<string, Side>>) => void
}) {
  const [picked, setPicked] = useState<Readonly<Record<string, Side>>>({})
  const [asked, setAsked] = useState(false)
  const box = useAttention(attempt)

  function save() {
    const open = merging.clashes.findIndex(({ path }) => picked[path] === undefined)
    setAsked(open >= 0)
    if (open < 0) onSave(picked)
    else box.current?.querySelector<HTMLElement>(`#${form}-choice-${open} input`)?.focus()
  }

  return (
    <section
      className="summary summary-conflict"
      ref={box}
      tabIndex={-1}
      aria-labelledby={`${form}-conflict-title`}
    >
      <h2 id={`${form}-conflict-title`}>{formWords.mergeTitle}</h2>
      <p>
        {conflict.own
          ? `${formWords.ownLead(conflict.when)} ${formWords.ownMerge}`
          : formWords.mergeLead(conflict.by, conflict.when)}
      </p>
      <div className="conflict-rows">
        {merging.clashes.map((clash, at) => (
          <ClashField
            key={clash.path}
            id={`${form}-choice-${at}`}
            clash={clash}
            own={conflict.own === true}
            side={picked[clash.path]}
            wanting={asked}
            onPick={(side) => setPicked({ ...picked, [clash.path]: side })}
          />
        ))}
      </div>
      {merging.taken.length === 0 ? null : (
        <p>{formWords[conflict.own ? 'ownTaken' : 'mergeTaken'](merging.taken.join('; '))}</p>
      )}
      <div className="button-row">
        <button type="button" className="button button-main" disabled={waiting} onClick={save}>
          {formWords.mergeSave}
        </button>
        <button type="button" className="button button-plain" disabled={waiting} onClick={onTakeTheirs}>
          {conflict.own ? formWords.keepSaved : formWords.keepTheirs}
        </button>
      </div>
    </section>
  )
}

function ClashField({
  id,
  clash,
  own,
  side,
  wanting,
  onPick,
}: {
  id: string
  clash: MergeClash
  own: boolean
  side: Side | undefined
  wanting: boolean
  onPick: (side: Side) => void
}) {
  const whose = own
    ? { theirs: formWords.otherWindow, mine: formWords.here }
    : { theirs: formWords.theirs, mine: formWords.yours }
  const missing = wanting && side === undefined
  return (
    <fieldset className="conflict-row" id={id} aria-describedby={missing ? `${id}-error` : undefined}>
      <legend>{clash.label}</legend>
      {missing ? (
        <p className="field-error" id={`${id}-error`}>
          <strong>{formWords.mend}</strong> {formWords.mergeUnchosen}
        </p>
      ) : null}
      {sides.map((one) => (
        <label className="conflict-side" key={one}>
          <input type="radio" name={id} checked={side === one} onChange={() => onPick(one)} />
          <span>
            <span className="conflict-whose">{whose[one]}</span>{' '}
            <span className="conflict-text">{clash[one] === '' ? '(nothing)' : clash[one]}</span>
          </span>
        </label>
      ))}
    </fieldset>
  )
}
