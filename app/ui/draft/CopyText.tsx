'use client'

import { useId, useRef } from 'react'
import { useCopying } from './useCopying.ts'
import { useReady } from './useReady.ts'

/** A text of many lines to take along. Where the browser gives no clipboard (plain http) it is marked instead. */
export function CopyText({ label, value, copyLabel }: { label: string; value: string; copyLabel: string }) {
  const id = useId()
  const ready = useReady()
  const area = useRef<HTMLTextAreaElement>(null)
  const { copy, said } = useCopying(area, value)
  return (
    <div className="field copy-field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <textarea id={id} ref={area} className="copy-text" readOnly rows={12} value={value} />
      <div className="button-row">
        <button type="button" className="button button-plain" disabled={!ready} onClick={copy}>
          {copyLabel}
        </button>
      </div>
      <p className="copy-said" role="status">
        {said}
      </p>
    </div>
  )
}
