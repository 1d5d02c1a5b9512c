'use client'

import type { ReactNode } from 'react'
import { describedBy, FieldFrame } from './FieldFrame.tsx'
import { useField } from './useField.ts'

/** A line of text, or several with `multiline`. */
export function TextField({
  path,
  label,
  hint,
  multiline = false,
  rows = 3,
  autoComplete = 'off',
}: {
  path: string
  label: ReactNode
  hint?: ReactNode
  multiline?: boolean | undefined
  rows?: number | undefined
  autoComplete?: string | undefined
}) {
  const { id, text, put, errors, findings, ready } = useField(path)
  const common = {
    id,
    value: text,
    readOnly: !ready,
    autoComplete,
    'aria-invalid': errors.length > 0 ? true : undefined,
    'aria-describedby': describedBy(id, {
      hint: hint !== undefined,
      errors: errors.length > 0,
      findings: findings.length > 0,
    }),
  }
  return (
    <FieldFrame id={id} label={label} hint={hint} errors={errors} findings={findings}>
      {multiline ? (
        <textarea
          {...common}
          rows={rows}
          enterKeyHint="enter"
          onChange={(event) => put(event.target.value)}
        />
      ) : (
        <input
          {...common}
          type="text"
          inputMode="text"
          enterKeyHint="done"
          autoCapitalize="sentences"
          onChange={(event) => put(event.target.value)}
        />
      )}
    </FieldFrame>
  )
}
