'use client'

import { DraftForm } from '../../ui/draft/DraftForm.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import type { SaveAction } from '../../ui/draft/useSaving.ts'
import type { FormNames } from './partWords.ts'

/** One household's count of the passages of both. */
export function PassagesForm({
  initial,
  save,
  names,
}: {
  initial: object
  save: SaveAction
  names: Pick<FormNames, 'a' | 'b'>
}) {
  return (
    <DraftForm initial={initial} base="new" save={save} saveLabel="Keep our count" form="passages">
      <FieldLine>
        <FigureField path="a" label={`Passages a week, ${names.a}`} />
        <FigureField path="b" label={`Passages a week, ${names.b}`} />
      </FieldLine>
    </DraftForm>
  )
}
