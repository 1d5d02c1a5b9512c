'use client'

import { dayWords } from '../../../lib/words/day.ts'
import { firstWords, textOf } from '../../../lib/words/rowReadingText.ts'
import { DateField } from '../../ui/draft/DateField.tsx'
import { RowsField } from '../../ui/draft/RowsField.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import type { SaveAction } from '../../ui/draft/useSaving.ts'
import { NotebookForm } from './NotebookForm.tsx'

/** What was decided and when. Each decision is marked by itself. */
export function DecisionsForm({ initial, base, save }: { initial: object; base: string; save: SaveAction }) {
  return (
    <NotebookForm initial={initial} base={base} save={save} saveLabel="Save the decisions">
      <RowsField
        path="decisions"
        label="Decisions"
        rowLabel={(row) => firstWords(textOf(row, 'text'))}
        empty={{ on: '', text: '' }}
        addLabel="Add a decision"
        // Whole it stands above, beside its marks.
        reading={(row) => dayWords(textOf(row, 'on')) || textOf(row, 'text')}
      >
        {(row) => (
          <>
            <DateField path={`${row}.on`} label="Decided on" />
            <TextField path={`${row}.text`} label="What you decided" multiline />
          </>
        )}
      </RowsField>
    </NotebookForm>
  )
}
