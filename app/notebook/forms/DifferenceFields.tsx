'use client'

import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { RowsField } from '../../ui/draft/RowsField.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import { useField } from '../../ui/draft/useField.ts'
import { type FormNames, householdChoices } from './partWords.ts'

/** What the basic fence of a section comes to, as a form would type it for each pot. */
export type BasicSums = Readonly<Record<'materials' | 'labour' | 'together', string>>

/** The cost of the basic fence for one pot, with what the described one comes to where it is another figure. */
export function BasicCostField({
  path,
  names,
  sum,
}: {
  path: string
  names: FormNames
  sum?: string | undefined
}) {
  const { text, put, ready } = useField(path)
  return (
    <div className="pot-fields">
      <FigureField
        path={path}
        label="Cost of the basic fence here"
        hint="What a plain fence that is enough for both would cost; anything above it is the upgrade."
        suffix={names.currency}
      />
      {sum === undefined || sum === text ? null : (
        <div className="button-row">
          <button type="button" className="button button-plain" disabled={!ready} onClick={() => put(sum)}>
            Put {sum} {names.currency} here, what the described basic fence comes to
          </button>
        </div>
      )}
    </div>
  )
}

/** Upgrades that one household wants and pays, in the order in which they are asked for. */
export function UpgradesField({ path, names }: { path: string; names: FormNames }) {
  return (
    <RowsField
      path={path}
      label="Upgrades that one household wants"
      hint="Each is asked of its household alone, from the top down. What is left above the basic fence is shared as chosen below."
      rowLabel={(row) => String((row as { what?: unknown } | null)?.what ?? '')}
      empty={{ what: '', amount: '', household: '' }}
      addLabel="Add an upgrade"
    >
      {(row) => (
        <>
          <FieldLine>
            <TextField path={`${row}.what`} label="What is wanted" hint="Such as “one foot more height”." />
            <FigureField path={`${row}.amount`} label="Costs more by" suffix={names.currency} />
          </FieldLine>
          <ChoiceField path={`${row}.household`} label="Asked of" options={householdChoices(names)} />
        </>
      )}
    </RowsField>
  )
}
