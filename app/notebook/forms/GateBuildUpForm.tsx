'use client'

import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { LengthField } from '../../ui/draft/LengthField.tsx'
import type { Fault } from '../../ui/draft/saveAnswer.ts'
import { TakenOut } from '../../ui/draft/TakenOut.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import { useOptionalPart } from '../../ui/draft/useOptionalPart.ts'
import type { SaveAction } from '../../ui/draft/useSaving.ts'
import { Panel } from '../../ui/Panel.tsx'
import { FinishFields, FootingFields, FreeLineFields, SpecialPostFields } from './BuildUpParts.tsx'
import { InfillFields } from './InfillFields.tsx'
import { MemberFields } from './MemberFields.tsx'
import { NotebookForm } from './NotebookForm.tsx'
import { type BuildUpOffers, StartingBuildUps } from './StartingBuildUps.tsx'

/** What a gate is made of. */
export function GateBuildUpForm({
  initial,
  base,
  save,
  offers,
  findings,
}: {
  initial: object
  base: string
  save: SaveAction
  offers: BuildUpOffers
  findings: readonly Fault[]
}) {
  return (
    <NotebookForm initial={initial} base={base} save={save} saveLabel="Save the build-up" findings={findings}>
      <Panel heading="Begin from">
        <StartingBuildUps offers={offers} />
        <TextField path="buildUp.name" label="Name of this build-up" />
      </Panel>
      <Panel heading="Leaf">
        <FieldLine>
          <FigureField path="buildUp.leaves" label="Leaves" hint="One or two." />
          <LengthField path="buildUp.leafHeight" label="Height of the leaf" hint="Empty: as the fence." />
        </FieldLine>
        <FieldLine>
          <LengthField path="buildUp.clearances.hinge" label="Clearance at the hinges" />
          <LengthField path="buildUp.clearances.latch" label="At the latch" />
          <LengthField path="buildUp.clearances.middle" label="Between two leaves" />
          <LengthField path="buildUp.clearances.ground" label="Over the ground" />
        </FieldLine>
        <ChoiceField
          path="buildUp.brace"
          label="Brace"
          optionalLabel="Not said yet"
          options={[
            { value: 'compression', label: 'Pressed: from the bottom hinge up to the latch side' },
            { value: 'tension', label: 'Pulled: from the top hinge down to the latch side' },
            { value: 'none', label: 'None' },
          ]}
        />
        <FieldLine>
          <TextField path="buildUp.hinges.what" label="Hinges" />
          <FigureField path="buildUp.hinges.perLeaf" label="On each leaf" />
          <LengthField path="buildUp.hinges.apart" label="Apart by" />
        </FieldLine>
        <TextField path="buildUp.latch" label="Latch" />
      </Panel>
      <Panel heading="Frame">
        <MemberFields path="buildUp.frame" />
      </Panel>
      <Panel heading="Infill of the leaf">
        <InfillFields path="buildUp.infill" />
      </Panel>
      <Panel heading="Posts and header">
        <SpecialPostFields path="buildUp.posts" label="Posts of this gate" />
        <HeaderFields />
      </Panel>
      <Panel heading="Footing, finish, and the rest">
        <FootingFields path="buildUp.footing" />
        <FinishFields path="buildUp.finishes" />
        <FreeLineFields path="buildUp.lines" />
      </Panel>
    </NotebookForm>
  )
}

/** A header ties the posts together over the gateway: shown only once somebody says that there is one. */
function HeaderFields() {
  const { isThere, ready, begin, takeOut, putBack } = useOptionalPart('buildUp.header')
  if (!isThere) {
    return (
      <div className="field">
        <button
          type="button"
          className="button button-plain"
          disabled={!ready}
          onClick={() => begin({ what: '', clear: '' })}
        >
          A header ties the posts together
        </button>
        <TakenOut name="Header" path="buildUp.header" onPutBack={putBack} />
      </div>
    )
  }
  return (
    <fieldset className="field special-post">
      <legend className="field-label">Header</legend>
      <LengthField path="buildUp.header.clear" label="Clear height under it" />
      <MemberFields path="buildUp.header" />
      <button type="button" className="button button-plain" disabled={!ready} onClick={takeOut}>
        No header
      </button>
    </fieldset>
  )
}
