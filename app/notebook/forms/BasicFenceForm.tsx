'use client'

import { Fold } from '../../ui/draft/Fold.tsx'
import { LengthField } from '../../ui/draft/LengthField.tsx'
import type { Fault } from '../../ui/draft/saveAnswer.ts'
import { TextField } from '../../ui/draft/TextField.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { LabourFields, MaterialsFields } from './LinesFields.tsx'
import { NotebookForm } from './NotebookForm.tsx'
import type { PartFormProps } from './partForm.ts'
import {
  BeginningFields,
  FootingAndRestFields,
  InfillAndTiesFields,
  PostsFields,
  RailsFields,
} from './SectionBuildUpFields.tsx'
import type { BuildUpOffers } from './StartingBuildUps.tsx'

const buildUp = 'basicFence.buildUp'
const groups = [
  { label: 'Posts', Fields: PostsFields, keys: ['posts', 'endPosts', 'cornerPosts', 'gatePosts'] },
  { label: 'Rails', Fields: RailsFields, keys: ['rails'] },
  { label: 'Infill and ties', Fields: InfillAndTiesFields, keys: ['infill', 'ties'] },
  {
    label: 'Footing, finish, and the rest',
    Fields: FootingAndRestFields,
    keys: ['footing', 'finishes', 'lines'],
  },
]

/** The plainer fence that would be enough on a section: what it is, what it is made of, and what it costs. */
export function BasicFenceForm({
  initial,
  base,
  save,
  names,
  offers,
  findings,
}: PartFormProps & { readonly offers: BuildUpOffers; readonly findings: readonly Fault[] }) {
  return (
    <NotebookForm
      initial={initial}
      base={base}
      save={save}
      saveLabel="Save the basic fence"
      findings={findings}
    >
      <Panel heading="What would be enough">
        <LengthField
          path="basicFence.height"
          label="Height of the basic fence"
          hint="Empty: as high as the section."
        />
        <TextField path="basicFence.infill" label="Infill" hint="Such as “farm wire”." />
        <TextField
          path="basicFence.notes"
          label="Why it would be enough"
          hint="What each household said, so that it can be read later."
          multiline
        />
      </Panel>
      <Panel heading="Made of">
        <BeginningFields path={buildUp} offers={offers} />
        {groups.map(({ label, Fields, keys }) => (
          <Fold key={label} label={label} paths={keys.map((key) => `${buildUp}.${key}`)}>
            <Fields path={buildUp} />
          </Fold>
        ))}
      </Panel>
      <Panel heading="Its materials">
        <MaterialsFields path="basicFence.materials" names={names} />
      </Panel>
      <Panel heading="Its work">
        <LabourFields path="basicFence.labour" names={names} />
      </Panel>
    </NotebookForm>
  )
}
