'use client'

import { evidenceKinds } from '../../../lib/core/agreement/notebook.ts'
import { evidenceWords } from '../../../lib/words/labels.ts'
import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { LengthField } from '../../ui/draft/LengthField.tsx'
import { RowsField } from '../../ui/draft/RowsField.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import type { SaveAction } from '../../ui/draft/useSaving.ts'
import { Panel } from '../../ui/Panel.tsx'
import { NotebookForm } from './NotebookForm.tsx'
import { type FormNames, householdChoices } from './partWords.ts'

/** Ends, evidence and stations of the boundary line. */
export function LineForm({
  initial,
  base,
  save,
  names,
}: {
  initial: object
  base: string
  save: SaveAction
  names: FormNames
}) {
  return (
    <NotebookForm initial={initial} base={base} save={save} saveLabel="Save the line">
      <Panel heading="Ends and evidence">
        <TextField
          path="line.start"
          label="Starts at"
          hint="A point that can be found again, such as “iron pin at the lane”."
        />
        <TextField path="line.end" label="Ends at" />
        <ChoiceField
          path="line.evidence"
          label="What the position of the line rests on"
          asRadios
          optionalLabel="Not said yet"
          options={evidenceKinds.map((kind) => ({ value: kind, label: evidenceWords[kind] }))}
        />
      </Panel>
      <Panel heading="Stations">
        <RowsField
          path="line.stations"
          label="Stations"
          hint="Points along the line, in order from its start. Ground heights are measured above one level that you choose, such as the ground at the start; below it they are negative."
          rowLabel={(row) => String((row as { at?: unknown } | null)?.at ?? '')}
          empty={{ at: '', setback: { side: '', distance: '' }, gradeA: '', gradeB: '', gradeFence: '' }}
          addLabel="Add a station"
        >
          {(row) => (
            <>
              <FieldLine>
                <LengthField path={`${row}.at`} label="Distance from the start" />
                <LengthField path={`${row}.setback.distance`} label="Setback of the fence from the line" />
              </FieldLine>
              <ChoiceField
                path={`${row}.setback.side`}
                label="The fence stands there on the land of"
                optionalLabel="Not said yet"
                options={householdChoices(names)}
              />
              <FieldLine>
                <LengthField path={`${row}.gradeA`} label={`Ground of ${names.a}`} />
                <LengthField path={`${row}.gradeB`} label={`Ground of ${names.b}`} />
                <LengthField path={`${row}.gradeFence`} label="Ground under the fence" />
              </FieldLine>
            </>
          )}
        </RowsField>
      </Panel>
    </NotebookForm>
  )
}
