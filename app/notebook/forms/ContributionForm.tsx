'use client'

import { contributionKinds } from '../../../lib/core/agreement/notebook.ts'
import { contributionWords } from '../../../lib/words/labels.ts'
import { type Choice, ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { DateField } from '../../ui/draft/DateField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { Shown } from '../../ui/draft/Shown.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import type { SaveAction } from '../../ui/draft/useSaving.ts'
import { NotebookForm } from './NotebookForm.tsx'
import { type FormNames, householdChoices } from './partWords.ts'

/** One new entry in the book. */
export function ContributionForm({
  initial,
  base,
  save,
  names,
  items,
}: {
  initial: object
  base: string
  save: SaveAction
  names: FormNames
  items: readonly Choice[]
}) {
  return (
    <NotebookForm initial={initial} base={base} save={save} saveLabel="Enter it">
      <ChoiceField path="household" label="Given by" options={householdChoices(names)} />
      <ChoiceField
        path="kind"
        label="What was given"
        options={contributionKinds.map((kind) => ({ value: kind, label: contributionWords[kind] }))}
      />
      <Shown path="kind" is="hours">
        <FieldLine>
          <FigureField path="hours" label="Hours" suffix="h" />
          <FigureField
            path="rate"
            label="Rate an hour"
            suffix={names.currency}
            hint="Without a rate the hours are worth nothing in money."
          />
        </FieldLine>
      </Shown>
      <Shown path="kind" is={contributionKinds.filter((kind) => kind !== 'hours')}>
        <FigureField path="amount" label="Amount" suffix={names.currency} />
      </Shown>
      <FieldLine>
        <DateField path="date" label="On" />
        <ChoiceField path="for" label="For" optionalLabel="the whole fence" options={items} />
      </FieldLine>
      <TextField path="note" label="Note" hint="Such as where it was bought, or the receipt’s number." />
    </NotebookForm>
  )
}
