'use client'

import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { textAt } from '../../ui/draft/draftPath.ts'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { Fold } from '../../ui/draft/Fold.tsx'
import { LengthField } from '../../ui/draft/LengthField.tsx'
import { RowsField } from '../../ui/draft/RowsField.tsx'
import type { Fault } from '../../ui/draft/saveAnswer.ts'
import { TextField } from '../../ui/draft/TextField.tsx'
import { SizeFields } from './MemberFields.tsx'
import { NotebookForm } from './NotebookForm.tsx'
import type { PartFormProps } from './partForm.ts'
import { type FormNames, householdChoices } from './partWords.ts'

const emptyPiece = {
  what: '',
  shape: '',
  outside: '',
  thickness: '',
  wall: '',
  length: '',
  count: '',
  household: '',
  notes: '',
}

/** Whoever measures a pile measures one profile many times: a new row takes it over from the row above. */
function nextPiece(above: unknown): object {
  return above === null || typeof above !== 'object'
    ? emptyPiece
    : { ...above, length: '', count: '', notes: '' }
}

/** Pieces at hand, measured. */
export function PiecesForm({
  initial,
  base,
  save,
  names,
  findings,
}: PartFormProps & { readonly findings: readonly Fault[] }) {
  return (
    <NotebookForm initial={initial} base={base} save={save} saveLabel="Save the pieces" findings={findings}>
      <RowsField
        path="inventory"
        label="Pieces"
        hint="A new row takes over what the piece above is; only its length is left to measure."
        rowLabel={(row) => pieceName(row as PieceRow | null)}
        empty={nextPiece}
        addLabel="Add a piece"
        beginWith="length"
      >
        {(row) => <PieceFields row={row} names={names} />}
      </RowsField>
    </NotebookForm>
  )
}

type PieceRow = { readonly what?: unknown; readonly length?: unknown; readonly count?: unknown }

function pieceName(row: PieceRow | null): string {
  const [what, length, count] = [row?.what, row?.length, row?.count].map((one) => String(one ?? '').trim())
  const each = length && count && count !== '1' ? `${count} × ${length}` : length
  return [what, each].filter(Boolean).join(', ')
}

function PieceFields({ row, names }: { row: string; names: FormNames }) {
  const { draft } = useDraft()
  const text = (key: string) => textAt(draft, `${row}.${key}`)
  const wall = text('wall')
  const profile = [text('what'), text('shape'), text('outside'), text('thickness'), wall && `wall ${wall}`]
  const about = profile.filter(Boolean).join(', ')
  const paths = ['what', 'shape', 'outside', 'thickness', 'wall', 'household', 'notes']
  return (
    <>
      <FieldLine>
        <LengthField path={`${row}.length`} label="Length" />
        <FigureField path={`${row}.count`} label="How many" hint="Empty: one." />
      </FieldLine>
      <Fold
        label="What it is"
        about={about === '' ? 'Profile, whose it is, notes.' : about}
        paths={paths.map((key) => `${row}.${key}`)}
        open={about === ''}
      >
        <TextField path={`${row}.what`} label="What" hint="Such as “reclaimed pipe”." />
        <SizeFields path={row} />
        <ChoiceField
          path={`${row}.household`}
          label="Whose it is"
          optionalLabel="Not said yet"
          options={householdChoices(names)}
        />
        <TextField path={`${row}.notes`} label="Notes" hint="Such as “bent at one end”." />
      </Fold>
    </>
  )
}
