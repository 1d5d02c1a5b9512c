'use client'

import type { ReactNode } from 'react'
import type { ItemKind, MetNeed } from '../../../lib/core/agreement/notebook.ts'
import { countedOnItsPage } from '../../../lib/words/passageText.ts'
import { ButtonLink } from '../../ui/ButtonLink.tsx'
import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { LengthField } from '../../ui/draft/LengthField.tsx'
import type { Fault } from '../../ui/draft/saveAnswer.ts'
import { TextField } from '../../ui/draft/TextField.tsx'
import type { RemoveAction, SaveAction } from '../../ui/draft/useSaving.ts'
import { Explain } from '../../ui/explain/Explain.tsx'
import { Panel } from '../../ui/Panel.tsx'
import type { BasicSums } from './DifferenceFields.tsx'
import { LabourFields, MaterialsFields } from './LinesFields.tsx'
import { MeetsField } from './MeetsField.tsx'
import { NotebookForm } from './NotebookForm.tsx'
import { type FormNames, groundChoices, householdChoices, keeperChoices } from './partWords.ts'
import { ShareFields } from './ShareFields.tsx'
import { SpreadField } from './SpreadField.tsx'

/** Everything about one section, gate or common cost, in one form. */
export function ItemForm({
  kind,
  initial,
  base,
  save,
  remove,
  names,
  findings,
  basicFence,
  needs,
  taken,
}: {
  kind: ItemKind
  initial: object
  base: string
  save: SaveAction
  remove?: RemoveAction | undefined
  names: FormNames
  findings?: readonly Fault[] | undefined
  /** Where a section's basic fence is described, and what it comes to once it is. */
  basicFence?: { readonly href: string; readonly sums: BasicSums | undefined } | undefined
  /** What a section can be said to meet, once both households have said what they need. */
  needs?: readonly MetNeed[] | undefined
  /** What is said above its cost lines once some of them come from the take-off. */
  taken?: ReactNode
}) {
  const thing = { section: 'section', gate: 'gate', common: 'common cost' }[kind]
  return (
    <NotebookForm
      initial={initial}
      base={base}
      save={save}
      saveLabel={`Save this ${thing}`}
      sends={base === 'new' ? 'entry known again' : 'part'}
      remove={remove}
      findings={findings}
      removeLabel={`Remove this ${thing}`}
      removeQuestion={`Remove this ${thing} with all its lines? Both marks go with it; the history keeps what it was.`}
    >
      <Panel heading="What it is">
        <TextField path="name" label="Name" hint={nameHints[kind]} />
        {kind === 'section' ? <SectionFields names={names} needs={needs} /> : null}
        {kind === 'gate' ? <GateFields names={names} /> : null}
        <TextField path="notes" label="Notes" multiline />
      </Panel>
      <Panel heading="Materials">
        {taken}
        <MaterialsFields names={names} />
      </Panel>
      <Panel heading="Work">
        <LabourFields names={names} />
      </Panel>
      <Panel heading="How it is shared">
        {kind === 'common' ? (
          <SpreadField names={names} />
        ) : (
          <ShareFields names={names} onGate={kind === 'gate'} basic={basicFence?.sums} />
        )}
        {basicFence === undefined ? null : (
          <div className="button-row">
            <ButtonLink href={basicFence.href}>
              {basicFence.sums
                ? 'The basic fence it is held against'
                : 'Describe a basic fence to hold it against'}
            </ButtonLink>
          </div>
        )}
      </Panel>
    </NotebookForm>
  )
}

const nameHints: Readonly<Record<ItemKind, string>> = {
  section: 'Such as “Lane to the gates”.',
  gate: 'Such as “Between the gardens”.',
  common: 'What serves the whole fence, such as “Auger hire”.',
}

function SectionFields({ names, needs }: { names: FormNames; needs: readonly MetNeed[] | undefined }) {
  return (
    <>
      <FieldLine>
        <LengthField path="from" label="From station" hint="Distance along the line from its start." />
        <LengthField path="to" label="To station" />
      </FieldLine>
      <Explain terms={['station', 'grade']} />
      <FieldLine>
        <LengthField path="height.agreed" label="Height" />
        <ChoiceField
          path="height.measuredFrom"
          label="Measured from the ground of"
          optionalLabel="Not said yet"
          options={groundChoices(names)}
        />
      </FieldLine>
      <TextField path="infill" label="Infill" hint="Such as “welded wire, 2 in by 4 in”." />
      <TextField
        path="face"
        label="Face"
        hint="Which side the finished face looks to, or “same on both sides”."
      />
      <TextField
        path="drainage"
        label="Drainage"
        hint="Where surface water goes, and how it passes the fence."
      />
      <MeetsField names={names} needs={needs} />
      <OwnerFields names={names} />
    </>
  )
}

function GateFields({ names }: { names: FormNames }) {
  return (
    <>
      <FieldLine>
        <LengthField path="at" label="Middle at station" hint="Middle of the clear opening." />
        <LengthField path="opening" label="Clear opening" />
      </FieldLine>
      <Explain terms={['station', 'opening']} />
      <ChoiceField
        path="stands"
        label="Stands on"
        optionalLabel="Not said yet"
        options={[
          { value: 'line', label: 'The line' },
          ...householdChoices(names).map((one) => ({ ...one, label: `Land of ${one.label}` })),
        ]}
      />
      <p className="field-hint">{countedOnItsPage}</p>
      <TextField
        path="opens"
        label="Opens"
        hint={`Such as “toward ${names.a}”. A gate should not swing over a neighbour’s path or a footway.`}
      />
      <FieldLine>
        <TextField path="latch" label="Latch" />
        <TextField path="keys" label="Keys" />
      </FieldLine>
      <OwnerFields names={names} />
    </>
  )
}

function OwnerFields({ names }: { names: FormNames }) {
  return (
    <FieldLine>
      <ChoiceField
        path="owner"
        label="Owned afterwards by"
        optionalLabel="Not said yet"
        options={keeperChoices(names)}
      />
      <ChoiceField
        path="upkeep"
        label="Kept up by"
        optionalLabel="Not said yet"
        options={keeperChoices(names)}
      />
    </FieldLine>
  )
}
