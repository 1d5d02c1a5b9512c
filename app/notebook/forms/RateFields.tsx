'use client'

import { skills } from '../../../lib/core/agreement/notebook.ts'
import { isNumber } from '../../../lib/core/amounts/typedNumber.ts'
import { departsWords, ratesAlone, skillWords } from '../../../lib/words/arrangementText.ts'
import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { setAt, textAt } from '../../ui/draft/draftPath.ts'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import type { FormNames } from './partWords.ts'

/** A labour line's own rate, with a word where it is not the agreed one: that is allowed, and shown. */
export function RateField({ row, names }: { row: string; names: FormNames }) {
  const { draft } = useDraft()
  const [rate, skill] = [textAt(draft, `${row}.rate`), skillOf(textAt(draft, `${row}.skill`))]
  const line = { rate: isNumber(rate, 6) ? rate : '', skill }
  const departs = names.rates && departsWords(line, ratesAlone(names.rates), names.currency)
  return (
    <FigureField
      path={`${row}.rate`}
      label="Rate an hour"
      hint={departs && `This is ${departs}.`}
      suffix={names.currency}
    />
  )
}

/** Which agreed rate a labour line goes by; choosing one fills in the rate where none is typed yet. */
export function SkillField({ row, names }: { row: string; names: FormNames }) {
  const { change } = useDraft()
  return (
    <ChoiceField
      path={`${row}.skill`}
      label="Kind of work"
      optionalLabel="Not said"
      options={skills.map((skill) => {
        const agreed = names.rates?.[skill] ?? ''
        return {
          value: skill,
          label: skillWords[skill],
          hint: agreed === '' ? undefined : `Agreed at ${agreed}.`,
        }
      })}
      onChosen={(chosen) => {
        const skill = skillOf(chosen)
        const agreed = skill === '' ? '' : (names.rates?.[skill] ?? '')
        if (agreed === '') return
        change((old) => (textAt(old, `${row}.rate`) === '' ? setAt(old, `${row}.rate`, agreed) : old))
      }}
    />
  )
}

function skillOf(typed: string): 'skilled' | 'plain' | '' {
  return typed === 'skilled' || typed === 'plain' ? typed : ''
}
