'use client'

import type { ReactNode } from 'react'
import { lengthMeant } from '../../../lib/core/amounts/typedLength.ts'
import { describedBy, FieldFrame } from './FieldFrame.tsx'
import { formWords } from './formWords.ts'
import { type ReadLength, useReadLength } from './LengthReading.tsx'
import { useField } from './useField.ts'

/** A length as typed, with its unit; below it stands how it is understood. */
export function LengthField({
  path,
  label,
  hint,
  readLength,
}: {
  path: string
  label: ReactNode
  hint?: ReactNode
  /** Only where it should differ from the `LengthReading` around the field. */
  readLength?: ReadLength | undefined
}) {
  const { id, text, put, errors, findings, ready } = useField(path)
  const around = useReadLength()
  const read = readLength ?? around
  const length = read?.(text)
  const reading =
    read === undefined || text.trim() === '' ? undefined : length === undefined ? unread(text) : `= ${length}`
  return (
    <FieldFrame
      id={id}
      label={label}
      hint={hint}
      errors={errors}
      findings={findings}
      width="short"
      after={
        read === undefined ? null : (
          <p className="field-reading figure" id={`${id}-reading`}>
            {reading ?? ''}
          </p>
        )
      }
    >
      <input
        id={id}
        className="figure"
        type="text"
        // Feet, inches, fractions and units: no keypad of figures has them.
        inputMode="text"
        enterKeyHint="done"
        autoComplete="off"
        autoCorrect="off"
        autoCapitalize="none"
        spellCheck={false}
        value={text}
        readOnly={!ready}
        aria-invalid={errors.length > 0 ? true : undefined}
        aria-describedby={describedBy(id, {
          hint: hint !== undefined,
          errors: errors.length > 0,
          findings: findings.length > 0,
          reading: reading !== undefined,
        })}
        onChange={(event) => put(event.target.value)}
      />
    </FieldFrame>
  )
}

function unread(text: string): string {
  const meant = lengthMeant(text)
  return meant === undefined ? formWords.lengthUnread : formWords.lengthMeant(meant)
}
