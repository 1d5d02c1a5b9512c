'use client'

import { evidenceKinds } from '../../../lib/core/agreement/notebook.ts'
import { evidenceWords } from '../../../lib/words/labels.ts'
import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { LengthField } from '../../ui/draft/LengthField.tsx'
import type { Fault } from '../../ui/draft/saveAnswer.ts'
import { TextField } from '../../ui/draft/TextField.tsx'
import { Explain } from '../../ui/explain/Explain.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { LimitFields } from './LimitFields.tsx'
import { NotebookForm } from './NotebookForm.tsx'
import type { PartFormProps } from './partForm.ts'
import { SiteFields } from './SiteFields.tsx'
import { StationFields } from './StationFields.tsx'

/** Ends, evidence and stations of the boundary line; limits on height; wind, soil and frost of the place. */
export function LineForm({
  initial,
  base,
  save,
  names,
  findings,
}: PartFormProps & { readonly findings: readonly Fault[] }) {
  return (
    <NotebookForm initial={initial} base={base} save={save} saveLabel="Save the line" findings={findings}>
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
        <LengthField
          path="line.error"
          label="The line may lie elsewhere by"
          hint="To either side. The surveyor or the plan may say it; where it is empty, the line is taken to be exact."
        />
      </Panel>
      <Panel heading="Stations">
        <Explain terms={['station', 'setback', 'grade']} />
        <StationFields names={names} />
      </Panel>
      <Panel heading="What others have said of the place">
        <LimitFields names={names} />
        <SiteFields />
      </Panel>
    </NotebookForm>
  )
}
