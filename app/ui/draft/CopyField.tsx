'use client'

import { useId, useRef } from 'react'
import { formWords } from './formWords.ts'
import { useCopying } from './useCopying.ts'
import { useReady } from './useReady.ts'

/** A text to take along, such as a private link. Where the browser gives no clipboard (plain http) it is marked instead. */
export function CopyField({
  label,
  value,
  hint,
}: {
  label: string
  value: string
  hint?: string | undefined
}) {
  const id = useId()
  const ready = useReady()
  const input = useRef<HTMLInputElement>(null)
  const { copy, said } = useCopying(input, value)
  return (
    <div className="field copy-field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      {hint === undefined ? null : (
        <p className="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <div className="copy-row">
        <input
          id={id}
          ref={input}
          type="text"
          readOnly
          value={value}
          aria-describedby={hint === undefined ? undefined : `${id}-hint`}
          onFocus={(event) => event.target.select()}
        />
        <button type="button" className="button button-plain" disabled={!ready} onClick={copy}>
          {formWords.copy}
        </button>
      </div>
      <p className="copy-said" role="status">
        {said}
      </p>
    </div>
  )
}
