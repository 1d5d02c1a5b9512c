'use client'

import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { LengthField } from '../../ui/draft/LengthField.tsx'
import type { Fault } from '../../ui/draft/saveAnswer.ts'
import { TextField } from '../../ui/draft/TextField.tsx'
import { TickField } from '../../ui/draft/TickField.tsx'
import type { SaveAction } from '../../ui/draft/useSaving.ts'
import { Panel } from '../../ui/Panel.tsx'
import { FinishFields, FootingFields, FreeLineFields, SpecialPostFields } from './BuildUpParts.tsx'
import { InfillFields } from './InfillFields.tsx'
import { HoleFields, MemberFields } from './MemberFields.tsx'
import { NotebookForm } from './NotebookForm.tsx'
import { type BuildUpOffers, StartingBuildUps } from './StartingBuildUps.tsx'

/** What a unit of this section is made of. */
export function SectionBuildUpForm({
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
        <ChoiceField
          path="buildUp.slope"
          label="On a slope"
          optionalLabel="Not said yet"
          options={[
            { value: 'raked', label: 'Raked: rails follow the ground' },
            { value: 'stepped', label: 'Stepped: bays stay level' },
          ]}
        />
      </Panel>
      <Panel heading="Posts">
        <MemberFields path="buildUp.posts" />
        <FieldLine>
          <LengthField path="buildUp.posts.spacing" label="Largest spacing" hint="Between post centres." />
          <ChoiceField
            path="buildUp.posts.layout"
            label="Bays"
            optionalLabel="Not said yet"
            options={[
              { value: 'equal', label: 'Equal bays' },
              { value: 'stock', label: 'Bays of the rail’s stock, and one remainder' },
            ]}
          />
        </FieldLine>
        <HoleFields path="buildUp.posts" />
        <FieldLine>
          <ChoiceField
            path="buildUp.posts.top"
            label="The top rail lies"
            optionalLabel="Not said yet"
            options={[
              { value: 'saddle', label: 'in a saddle on the post' },
              { value: 'flat', label: 'on the flat top of the post' },
              { value: 'beside', label: 'beside the post' },
            ]}
          />
          <LengthField
            path="buildUp.posts.deduction"
            label="Deduction at the top"
            hint="From the top of the fence down to the top of the post piece. Empty: worked out."
          />
        </FieldLine>
        <SpecialPostFields path="buildUp.endPosts" label="End posts" />
        <SpecialPostFields path="buildUp.cornerPosts" label="Corner posts" />
        <SpecialPostFields path="buildUp.gatePosts" label="Gate posts" />
      </Panel>
      <Panel heading="Rails">
        <FigureField path="buildUp.rails.count" label="Rails, one above the other" hint="Empty: none." />
        <MemberFields path="buildUp.rails" />
        <ChoiceField
          path="buildUp.rails.joints"
          label="Joints"
          optionalLabel="Not said yet"
          options={[
            { value: 'posts', label: 'Over posts only' },
            { value: 'spliced', label: 'Spliced pieces may be let in' },
          ]}
        />
        <TickField path="buildUp.rails.welded" label="Welded to the posts" />
        <FieldLine>
          <FigureField path="buildUp.rails.temperatureRange" label="Coldest to hottest day" suffix="°F" />
          <LengthField path="buildUp.rails.slip" label="A slip joint takes" />
        </FieldLine>
      </Panel>
      <Panel heading="Infill and ties">
        <InfillFields path="buildUp.infill" />
        <TextField path="buildUp.ties.what" label="Ties" />
        <FieldLine>
          <FigureField path="buildUp.ties.perPost" label="On each post" />
          <FigureField path="buildUp.ties.perRail" label="On each rail of each bay" />
        </FieldLine>
      </Panel>
      <Panel heading="Footing, finish, and the rest">
        <FootingFields path="buildUp.footing" />
        <FinishFields path="buildUp.finishes" />
        <FreeLineFields path="buildUp.lines" />
      </Panel>
    </NotebookForm>
  )
}
