'use client'

import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { LengthField } from '../../ui/draft/LengthField.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import { TickField } from '../../ui/draft/TickField.tsx'
import { Explain } from '../../ui/explain/Explain.tsx'
import { FinishFields, FootingFields, FreeLineFields, SpecialPostFields } from './BuildUpParts.tsx'
import { InfillFields } from './InfillFields.tsx'
import { HoleFields, MemberFields } from './MemberFields.tsx'
import { type BuildUpOffers, StartingBuildUps } from './StartingBuildUps.tsx'

// The fields of a section's build-up in the groups in which they are typed; `path` is where the build-up stands.

/** Ready and kept build-ups to begin from, the name, and what the rails do on a slope. */
export function BeginningFields({ path, offers }: { path: string; offers: BuildUpOffers }) {
  return (
    <>
      <StartingBuildUps path={path} offers={offers} />
      <TextField path={`${path}.name`} label="Name of this build-up" />
      <ChoiceField
        path={`${path}.slope`}
        label="On a slope"
        optionalLabel="Not said yet"
        options={[
          { value: 'raked', label: 'Raked: rails follow the ground' },
          { value: 'stepped', label: 'Stepped: bays stay level' },
        ]}
      />
      <Explain terms={['rake']} />
    </>
  )
}

export function PostsFields({ path }: { path: string }) {
  return (
    <>
      <MemberFields path={`${path}.posts`} />
      <FieldLine>
        <LengthField path={`${path}.posts.spacing`} label="Largest spacing" hint="Between post centres." />
        <ChoiceField
          path={`${path}.posts.layout`}
          label="Bays"
          optionalLabel="Not said yet"
          options={[
            { value: 'equal', label: 'Equal bays' },
            { value: 'stock', label: 'Bays of the rail’s stock, and one remainder' },
          ]}
        />
      </FieldLine>
      <Explain terms={['bay', 'kerf']} />
      <HoleFields path={`${path}.posts`} />
      <FieldLine>
        <ChoiceField
          path={`${path}.posts.top`}
          label="The top rail lies"
          optionalLabel="Not said yet"
          options={[
            { value: 'saddle', label: 'in a saddle on the post' },
            { value: 'flat', label: 'on the flat top of the post' },
            { value: 'beside', label: 'beside the post' },
          ]}
        />
        <LengthField
          path={`${path}.posts.deduction`}
          label="Deduction at the top"
          hint="From the top of the fence down to the top of the post piece. Empty: worked out."
        />
      </FieldLine>
      <Explain terms={['deduction']} />
      <SpecialPostFields path={`${path}.endPosts`} label="End posts" />
      <SpecialPostFields path={`${path}.cornerPosts`} label="Corner posts" />
      <SpecialPostFields path={`${path}.gatePosts`} label="Gate posts" />
    </>
  )
}

export function RailsFields({ path }: { path: string }) {
  return (
    <>
      <FigureField path={`${path}.rails.count`} label="Rails, one above the other" hint="Empty: none." />
      <MemberFields path={`${path}.rails`} />
      <ChoiceField
        path={`${path}.rails.joints`}
        label="Joints"
        optionalLabel="Not said yet"
        options={[
          { value: 'posts', label: 'Over posts only' },
          { value: 'spliced', label: 'Spliced pieces may be let in' },
        ]}
      />
      <TickField path={`${path}.rails.welded`} label="Welded to the posts" />
      <FieldLine>
        <FigureField path={`${path}.rails.temperatureRange`} label="Coldest to hottest day" suffix="°F" />
        <LengthField path={`${path}.rails.slip`} label="A slip joint takes" />
      </FieldLine>
    </>
  )
}

export function InfillAndTiesFields({ path }: { path: string }) {
  return (
    <>
      <InfillFields path={`${path}.infill`} />
      <TextField path={`${path}.ties.what`} label="Ties" />
      <FieldLine>
        <FigureField path={`${path}.ties.perPost`} label="On each post" />
        <FigureField path={`${path}.ties.perRail`} label="On each rail of each bay" />
      </FieldLine>
    </>
  )
}

export function FootingAndRestFields({ path }: { path: string }) {
  return (
    <>
      <FootingFields path={`${path}.footing`} />
      <FinishFields path={`${path}.finishes`} />
      <FreeLineFields path={`${path}.lines`} />
    </>
  )
}
