'use client'

import type { MetNeed } from '../../../lib/core/agreement/notebook.ts'
import { households } from '../../../lib/core/people/household.ts'
import { meetsHint, needText, noLongerSaid } from '../../../lib/words/needText.ts'
import { FieldNotes } from '../../ui/draft/FieldFrame.tsx'
import { useField } from '../../ui/draft/useField.ts'
import { HouseholdTag } from '../../ui/HouseholdTag.tsx'
import type { FormNames } from './partWords.ts'

/** Which needs a section meets: one box for each need that both know of, and for each that it names already. */
export function MeetsField({
  names,
  needs,
}: {
  names: FormNames
  /** Undefined until both households have said theirs. */
  needs: readonly MetNeed[] | undefined
}) {
  const { id, value, put, errors, findings, ready } = useField('meets')
  const met = Array.isArray(value) ? (value as readonly MetNeed[]) : []
  const said = needs ?? []
  const gone = met.filter((one) => !said.some((need) => sameNeed(one, need)))
  const choices = [...said, ...gone]
  const toggle = (need: MetNeed, ticked: boolean) =>
    put(ticked ? [...met, need] : met.filter((one) => !sameNeed(one, need)))
  return (
    <fieldset className="field" id={id} tabIndex={-1}>
      <legend className="field-label">Meets the need of</legend>
      <FieldNotes
        id={id}
        hint={needs === undefined ? meetsHint : undefined}
        errors={errors}
        findings={findings}
      />
      {households.map((household) => {
        const own = choices.filter((need) => need.household === household)
        if (own.length === 0) return null
        return (
          <div className="choices" key={household}>
            <HouseholdTag household={household} name={names[household]} />
            {own.map((need) => (
              <div className="choice" key={need.need}>
                <input
                  id={`${id}-${household}-${said.indexOf(need)}-${gone.indexOf(need)}`}
                  type="checkbox"
                  checked={met.some((one) => sameNeed(one, need))}
                  disabled={!ready}
                  onChange={(event) => toggle(need, event.target.checked)}
                />
                <label htmlFor={`${id}-${household}-${said.indexOf(need)}-${gone.indexOf(need)}`}>
                  {needText(need.need)}
                  <span className="only-read-out">, for {names[household]}</span>
                  {needs !== undefined && gone.includes(need) ? (
                    <span className="choice-hint">{noLongerSaid}</span>
                  ) : null}
                </label>
              </div>
            ))}
          </div>
        )
      })}
    </fieldset>
  )
}

function sameNeed(one: MetNeed, other: MetNeed): boolean {
  return one.household === other.household && one.need === other.need
}
