'use client'

import { upkeepIntervals } from '../../../lib/core/agreement/notebook.ts'
import { intervalWords } from '../../../lib/words/upkeepText.ts'
import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { DateField } from '../../ui/draft/DateField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { RowsField } from '../../ui/draft/RowsField.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import { NotebookForm } from './NotebookForm.tsx'
import type { PartFormProps } from './partForm.ts'
import { keeperChoices } from './partWords.ts'

export const intervalChoices = upkeepIntervals.map((value) => ({ value, label: intervalWords[value] }))

/** How the fence came out and who keeps it up. */
export function ClosingForm({ initial, base, save, names }: PartFormProps) {
  return (
    <NotebookForm initial={initial} base={base} save={save} saveLabel="Save the closing">
      <DateField path="closing.on" label="The fence stood as it is to stay on" />
      <RowsField
        path="closing.asBuilt"
        label="As it was built"
        hint="Measure it and write down what differs from the plan too: heights, posts off their place, depths, gates."
        rowLabel={whatOf}
        empty={{ what: '', measured: '' }}
        addLabel="Add a measurement"
      >
        {(row) => (
          <>
            <TextField path={`${row}.what`} label="What" />
            <TextField path={`${row}.measured`} label="Measured" />
          </>
        )}
      </RowsField>
      <RowsField
        path="closing.upkeep"
        label="Who keeps it up"
        rowLabel={whatOf}
        empty={{ what: '', household: '', every: '' }}
        addLabel="Add something to keep up"
      >
        {(row) => (
          <>
            <TextField path={`${row}.what`} label="What" />
            <FieldLine>
              <ChoiceField
                path={`${row}.household`}
                label="Who"
                optionalLabel="Not said yet"
                options={keeperChoices(names)}
              />
              <ChoiceField
                path={`${row}.every`}
                label="How often"
                optionalLabel="When it is needed"
                options={intervalChoices}
              />
            </FieldLine>
          </>
        )}
      </RowsField>
      <TextField path="closing.notes" label="Notes" multiline />
    </NotebookForm>
  )
}

function whatOf(row: unknown): string {
  return String((row as { what?: unknown } | null)?.what ?? '')
}
