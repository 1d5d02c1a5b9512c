'use client'

import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import type { Fault } from '../../ui/draft/saveAnswer.ts'
import type { SaveAction } from '../../ui/draft/useSaving.ts'
import { NotebookForm } from './NotebookForm.tsx'
import type { FormNames } from './partWords.ts'

/** The most each household has agreed to be asked for; empty is no cap. */
export function CapsForm({
  initial,
  base,
  save,
  names,
  findings,
}: {
  initial: object
  base: string
  save: SaveAction
  names: FormNames
  findings: readonly Fault[]
}) {
  return (
    <NotebookForm initial={initial} base={base} save={save} saveLabel="Save the caps" findings={findings}>
      <FieldLine>
        <FigureField
          path="caps.a"
          label={`The most that ${names.a} is asked for`}
          suffix={names.currency}
          hint="Empty: no cap."
        />
        <FigureField
          path="caps.b"
          label={`The most that ${names.b} is asked for`}
          suffix={names.currency}
          hint="Empty: no cap."
        />
      </FieldLine>
    </NotebookForm>
  )
}
