'use client'

import { useDraft } from '../../ui/draft/draftContext.ts'
import { getAt, textAt } from '../../ui/draft/draftPath.ts'
import { RowsField } from '../../ui/draft/RowsField.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import { NotebookForm } from './NotebookForm.tsx'
import type { PartFormProps } from './partForm.ts'
import type { FormNames } from './partWords.ts'

/** Build-ups that the households keep: to rename, put in order, or remove. */
export function BuildUpsForm({ initial, base, save, names }: PartFormProps) {
  return (
    <NotebookForm initial={initial} base={base} save={save} saveLabel="Save the build-ups">
      <RowsField
        path="buildUps"
        label="Kept build-ups"
        hint="Sections and gates that began from one stay as they are, whatever you change here."
        rowLabel={(row) => String((row as { name?: unknown } | null)?.name ?? '')}
        empty={{ name: '' }}
      >
        {(row) => (
          <>
            <TextField path={`${row}.name`} label="Name" />
            <KeptAbout row={row} names={names} />
          </>
        )}
      </RowsField>
    </NotebookForm>
  )
}

function KeptAbout({ row, names }: { row: string; names: FormNames }) {
  const { draft } = useDraft()
  const of = getAt(draft, `${row}.gate`) === undefined ? 'section' : 'gate'
  const keeper = textAt(draft, `${row}.household`)
  const by = keeper === 'a' || keeper === 'b' ? `, kept by ${names[keeper]}` : ''
  return (
    <p className="field-hint">
      For a {of}
      {by}.
    </p>
  )
}
