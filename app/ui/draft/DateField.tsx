'use client'

import { type ReactNode, useState } from 'react'
import { describedBy, FieldFrame } from './FieldFrame.tsx'
import { useField } from './useField.ts'

/** Whether a date control can show the text; it shows nothing for any other, and what was typed would seem lost. */
function isCalendarDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false
  const day = new Date(`${text}T00:00:00Z`)
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text)
}

/** A calendar day, kept as ISO 8601 text (`2027-04-30`). */
export function DateField({ path, label, hint }: { path: string; label: ReactNode; hint?: ReactNode }) {
  const { id, text, put, errors, findings, ready } = useField(path)
  const [asText] = useState(text !== '' && !isCalendarDay(text))
  return (
    <FieldFrame id={id} label={label} hint={hint} errors={errors} findings={findings} width="short">
      <input
        id={id}
        className="figure"
        type={asText ? 'text' : 'date'}
        enterKeyHint="done"
        autoComplete="off"
        value={text}
        readOnly={!ready}
        aria-invalid={errors.length > 0 ? true : undefined}
        aria-describedby={describedBy(id, {
          hint: hint !== undefined,
          errors: errors.length > 0,
          findings: findings.length > 0,
        })}
        onChange={(event) => put(event.target.value)}
      />
    </FieldFrame>
  )
}
