'use client'

import { dateReading, textOf } from '../../../lib/words/rowReadingText.ts'
import { intervalWords } from '../../../lib/words/upkeepText.ts'
import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { DateField } from '../../ui/draft/DateField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { RowsField } from '../../ui/draft/RowsField.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import { TickField } from '../../ui/draft/TickField.tsx'
import { intervalChoices } from './ClosingForm.tsx'
import { NotebookForm } from './NotebookForm.tsx'
import type { PartFormProps } from './partForm.ts'
import { keeperChoices } from './partWords.ts'

/** What is due or runs out on a day, and whose it is to see to. */
export function DatesForm({ initial, base, save, names }: PartFormProps) {
  return (
    <NotebookForm initial={initial} base={base} save={save} saveLabel="Save the dates">
      <RowsField
        path="dates"
        label="Dates"
        rowLabel={(row) => textOf(row, 'what')}
        empty={{ what: '', on: '', household: '', every: '', notes: '' }}
        addLabel="Add a date"
        reading={(row) => dateReading(row, names, intervalWords)}
        besides={(row) => <TickField path={`${row}.done`} label="Done" />}
      >
        {(row) => (
          <>
            <TextField path={`${row}.what`} label="What is due or runs out" />
            <FieldLine>
              <DateField path={`${row}.on`} label="On" />
              <ChoiceField
                path={`${row}.household`}
                label="Who sees to it"
                optionalLabel="Not said yet"
                options={keeperChoices(names)}
              />
              <ChoiceField
                path={`${row}.every`}
                label="Comes round"
                optionalLabel="Once"
                options={intervalChoices}
              />
            </FieldLine>
            <TextField path={`${row}.notes`} label="Notes" hint="Who said so, and where it is written." />
          </>
        )}
      </RowsField>
    </NotebookForm>
  )
}
