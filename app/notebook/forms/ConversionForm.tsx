'use client'

import { type Choice, ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { textAt } from '../../ui/draft/draftPath.ts'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import type { SaveAction } from '../../ui/draft/useSaving.ts'
import { NotebookForm } from './NotebookForm.tsx'
import type { FormNames } from './partWords.ts'

type StillToGive = Readonly<Record<string, string>>

/** A household's own: money in the place of hours, or hours in the place of money. It needs the other's mark. */
export function ConversionForm({
  initial,
  save,
  names,
  items,
  stillToGive,
}: {
  initial: object
  save: SaveAction
  names: FormNames
  items: readonly Choice[]
  /** By item: what the household has still to give on it, in words. */
  stillToGive: StillToGive
}) {
  return (
    <NotebookForm initial={initial} base="new" save={save} saveLabel="Ask for it" form="conversion">
      <ChoiceField
        path="to"
        label="You want to"
        options={[
          { value: 'money', label: 'Give money instead of hours' },
          { value: 'hours', label: 'Give hours instead of money' },
        ]}
      />
      <ChoiceField path="item" label="For" options={items} />
      <HoursAndRate names={names} stillToGive={stillToGive} />
      <TextField path="why" label="Why" />
    </NotebookForm>
  )
}

function HoursAndRate({ names, stillToGive }: { names: FormNames; stillToGive: StillToGive }) {
  const { draft } = useDraft()
  const still = textAt(draft, 'to') === 'money' ? stillToGive[textAt(draft, 'item')] : undefined
  const { skilled = '', plain = '' } = names.rates ?? {}
  const agreed = [skilled && `${skilled} for skilled work`, plain && `${plain} for plain work`].filter(
    Boolean,
  )
  return (
    <FieldLine>
      <FigureField
        path="hours"
        label="Hours"
        hint={still === undefined ? undefined : `Still to give here: ${still}.`}
        suffix="h"
      />
      <FigureField
        path="rate"
        label="Rate an hour"
        hint={agreed.length === 0 ? undefined : `Agreed: ${agreed.join(', ')}.`}
        suffix={names.currency}
      />
    </FieldLine>
  )
}
