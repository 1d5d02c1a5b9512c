'use client'

import type { ReactNode } from 'react'
import { describedBy, FieldNotes } from './FieldFrame.tsx'
import { useField } from './useField.ts'

/** Yes or no. `whenMissing` says what a draft without the value means. */
export function TickField({
  path,
  label,
  hint,
  whenMissing = false,
}: {
  path: string
  label: ReactNode
  hint?: ReactNode
  whenMissing?: boolean | undefined
}) {
  const { id, value, put, errors, findings, ready } = useField(path)
  return (
    <div
      className="field field-tick"
      data-wrong={errors.length > 0 ? '' : undefined}
      data-found={findings.length > 0 ? '' : undefined}
    >
      <div className="choice">
        <input
          id={id}
          type="checkbox"
          checked={typeof value === 'boolean' ? value : whenMissing}
          disabled={!ready}
          aria-invalid={errors.length > 0 ? true : undefined}
          aria-describedby={describedBy(id, {
            hint: hint !== undefined,
            errors: errors.length > 0,
            findings: findings.length > 0,
          })}
          onChange={(event) => put(event.target.checked)}
        />
        <label htmlFor={id}>{label}</label>
      </div>
      <FieldNotes id={id} hint={hint} errors={errors} findings={findings} />
    </div>
  )
}
