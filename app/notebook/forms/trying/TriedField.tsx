'use client'

import { useId } from 'react'
import { type TriedEdit, triedTextHolds } from '../../../../lib/core/trying/tried.ts'
import { lengthReading } from '../../../../lib/words/length.ts'
import { triedFaultWords, tryWords } from '../../../../lib/words/tryText.ts'
import { describedBy, FieldFrame } from '../../../ui/draft/FieldFrame.tsx'

/** One input as it is tried, with what is planned beside it. */
export function TriedField({
  label,
  suffix,
  edit,
  planned,
  digits = 0,
  onTry,
}: {
  label: string
  suffix?: string | undefined
  /** Of the currency, after the point; needed for amounts of money. */
  digits?: number
  /** The input, with the text that stands in the field. */
  edit: TriedEdit
  planned: string
  onTry: (edit: TriedEdit, planned: string) => void
}) {
  const id = useId()
  const changed = edit.text !== planned
  const errors =
    changed && !triedTextHolds(edit.field, edit.text, digits) ? [triedFaultWords[edit.field]] : []
  const isLength = !('line' in edit) && edit.field !== 'buildUp'
  const reading = isLength && errors.length === 0 ? lengthReading(edit.text) : undefined
  return (
    <FieldFrame
      id={id}
      label={label}
      errors={errors}
      width="short"
      after={
        <p className="field-reading" id={`${id}-reading`}>
          {reading === undefined ? '' : `= ${reading}. `}
          {changed ? tryWords.planned(planned) : ''}
        </p>
      }
    >
      <div className="figure-entry">
        <input
          id={id}
          className="figure"
          type="text"
          inputMode={isLength ? undefined : 'decimal'}
          autoComplete="off"
          autoCapitalize="none"
          spellCheck={false}
          value={edit.text}
          data-tried={changed ? '' : undefined}
          aria-invalid={errors.length > 0 ? true : undefined}
          aria-describedby={describedBy(id, {
            hint: false,
            errors: errors.length > 0,
            reading: true,
            unit: suffix !== undefined && suffix !== '',
          })}
          onChange={(event) => onTry({ ...edit, text: event.target.value }, planned)}
        />
        {suffix === undefined || suffix === '' ? null : (
          <span className="figure-unit" id={`${id}-unit`}>
            {suffix}
          </span>
        )}
      </div>
    </FieldFrame>
  )
}
