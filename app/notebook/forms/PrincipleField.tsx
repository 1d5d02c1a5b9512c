'use client'

import type { PrincipleName } from '../../../lib/core/agreement/notebook.ts'
import { startingPrinciple } from '../../../lib/forms/startingPrinciple.ts'
import { principleMeaning } from '../../../lib/words/labels.ts'
import { describedBy, FieldFrame } from '../../ui/draft/FieldFrame.tsx'
import { useField } from '../../ui/draft/useField.ts'
import { principleChoices } from './partWords.ts'

/** Chooses the principle of one pot. The whole share at `path` is put in place, not just its name. */
export function PrincipleField({
  path,
  label,
  onGate,
  nested,
}: {
  path: string
  label: string
  onGate: boolean
  nested: boolean
}) {
  const share = useField(path)
  const chosen = useField(`${path}.principle`)
  const choices = principleChoices(onGate, nested)
  const meaning = choices.find((choice) => choice.value === chosen.text)
  const errors = [...share.errors, ...chosen.errors]
  const unknown = chosen.text !== '' && meaning === undefined
  return (
    <FieldFrame
      id={chosen.id}
      label={`${label}: shared by`}
      hint={meaning ? principleMeaning[meaning.value as PrincipleName] : 'Choose how this is shared.'}
      errors={errors}
    >
      <select
        id={chosen.id}
        value={chosen.text}
        disabled={!share.ready}
        aria-describedby={describedBy(chosen.id, { hint: true, errors: errors.length > 0 })}
        aria-invalid={errors.length > 0 ? true : undefined}
        onChange={(event) => {
          const principle = event.target.value as PrincipleName
          share.put({ principle, ...startingPrinciple[principle] })
        }}
      >
        {unknown || chosen.text === '' ? <option value={chosen.text}>{chosen.text}</option> : null}
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.label}
          </option>
        ))}
      </select>
    </FieldFrame>
  )
}
