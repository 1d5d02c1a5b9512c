'use client'

import type { Fault } from '../../ui/draft/saveAnswer.ts'
import type { SaveAction } from '../../ui/draft/useSaving.ts'
import { Panel } from '../../ui/Panel.tsx'
import { NotebookForm } from './NotebookForm.tsx'
import {
  BeginningFields,
  FootingAndRestFields,
  InfillAndTiesFields,
  PostsFields,
  RailsFields,
} from './SectionBuildUpFields.tsx'
import type { BuildUpOffers } from './StartingBuildUps.tsx'

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
        <BeginningFields path="buildUp" offers={offers} />
      </Panel>
      <Panel heading="Posts">
        <PostsFields path="buildUp" />
      </Panel>
      <Panel heading="Rails">
        <RailsFields path="buildUp" />
      </Panel>
      <Panel heading="Infill and ties">
        <InfillAndTiesFields path="buildUp" />
      </Panel>
      <Panel heading="Footing, finish, and the rest">
        <FootingAndRestFields path="buildUp" />
      </Panel>
    </NotebookForm>
  )
}
