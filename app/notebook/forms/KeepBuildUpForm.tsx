'use client'

import { DraftForm } from '../../ui/draft/DraftForm.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import type { SaveAction } from '../../ui/draft/useSaving.ts'
import { Panel } from '../../ui/Panel.tsx'

const nothingTyped = { name: '' }

/** Keeps the build-up that is saved under a name, to begin other sections or gates from. */
export function KeepBuildUpForm({ save }: { save: SaveAction }) {
  return (
    <DraftForm initial={nothingTyped} base="new" save={save} saveLabel="Keep this build-up" form="keep">
      <Panel heading="Keep it for the next one">
        <TextField
          path="name"
          label="Name to keep it under"
          hint="It keeps what is saved above: save your changes first. Other sections and gates can then begin from it."
        />
      </Panel>
    </DraftForm>
  )
}
