'use client'

import { checkReading, textOf } from '../../../lib/words/rowReadingText.ts'
import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { DateField } from '../../ui/draft/DateField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { RowsField } from '../../ui/draft/RowsField.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import { TickField } from '../../ui/draft/TickField.tsx'
import { NotebookForm } from './NotebookForm.tsx'
import type { PartFormProps } from './partForm.ts'
import { householdChoices } from './partWords.ts'

/** Whom to ask first: who asks, when, what was said. */
export function ChecksForm({ initial, base, save, names }: PartFormProps) {
  return (
    <NotebookForm initial={initial} base={base} save={save} saveLabel="Save the checks">
      <RowsField
        path="checks"
        label="Checks"
        rowLabel={(row) => textOf(row, 'what')}
        empty={{ what: '', who: '', on: '', answer: '', reference: '' }}
        addLabel="Add a check"
        reading={(row) => checkReading(row, names)}
        besides={(row) => <TickField path={`${row}.done`} label="Answered and done" />}
      >
        {(row) => (
          <>
            <TextField path={`${row}.what`} label="What to ask, and whom" />
            <FieldLine>
              <ChoiceField
                path={`${row}.who`}
                label="Who asks"
                optionalLabel="Not said yet"
                options={householdChoices(names)}
              />
              <DateField path={`${row}.on`} label="Asked or due on" />
            </FieldLine>
            <TextField path={`${row}.answer`} label="What was said, and by whom" multiline />
            <TextField
              path={`${row}.reference`}
              label="Where the answer can be found"
              hint="A file name, letter number or web address."
            />
          </>
        )}
      </RowsField>
    </NotebookForm>
  )
}
