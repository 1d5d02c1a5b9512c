'use client'

import type { ReactNode } from 'react'
import { figureTyped } from '../../../lib/core/amounts/typedFigure.ts'
import { describedBy, FieldFrame } from './FieldFrame.tsx'
import { useField } from './useField.ts'

/**
 * A figure kept as it was typed, with a point: money, quantity, hours, percent. `suffix` names its unit or currency beside
 * it.
 */
export function FigureField({
  path,
  label,
  hint,
  suffix,
}: {
  path: string
  label: ReactNode
  hint?: ReactNode
  suffix?: string | undefined
}) {
  const { id, text, put, errors, findings, ready } = useField(path)
  const hasUnit = suffix !== undefined && suffix !== ''
  /** The keys for figures of some phones have a comma and no point; hours are counted in halves and quarters. */
  function readAsMeant() {
    const figure = figureTyped(text, suffix ?? '')
    if (figure !== text) put(figure)
  }
  return (
    <FieldFrame id={id} label={label} hint={hint} errors={errors} findings={findings} width="short">
      <div className="figure-entry">
        <input
          id={id}
          className="figure"
          type="text"
          inputMode="decimal"
          enterKeyHint="done"
          autoComplete="off"
          value={text}
          readOnly={!ready}
          aria-invalid={errors.length > 0 ? true : undefined}
          aria-describedby={describedBy(id, {
            hint: hint !== undefined,
            errors: errors.length > 0,
            findings: findings.length > 0,
            unit: hasUnit,
          })}
          onChange={(event) => put(event.target.value)}
          onBlur={readAsMeant}
          // Enter sends the form without leaving the field.
          onKeyDown={(event) => {
            if (event.key === 'Enter') readAsMeant()
          }}
        />
        {hasUnit ? (
          <span className="figure-unit" id={`${id}-unit`}>
            {suffix}
          </span>
        ) : null}
      </div>
    </FieldFrame>
  )
}
