'use client'

import { capacities } from '../../../lib/core/agreement/notebook.ts'
import { capacityWords, tenantCaution } from '../../../lib/words/labels.ts'
import { Caution } from '../../ui/Caution.tsx'
import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { RowsField } from '../../ui/draft/RowsField.tsx'
import { Shown } from '../../ui/draft/Shown.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import type { SaveAction } from '../../ui/draft/useSaving.ts'
import { Panel } from '../../ui/Panel.tsx'
import { type Currencies, CurrencyAndUnits } from './CurrencyAndUnits.tsx'
import { NotebookForm } from './NotebookForm.tsx'

/** Title, currency, units, and both households with their parties. */
export function HeadingForm({
  initial,
  base,
  save,
  saveLabel,
  currencies,
}: {
  initial: object
  base: string
  save: SaveAction
  saveLabel: string
  currencies: Currencies
}) {
  return (
    <NotebookForm initial={initial} base={base} save={save} saveLabel={saveLabel}>
      <Panel heading="The notebook">
        <TextField path="title" label="Title" hint="What you both call this fence, such as “Orchard line”." />
        <CurrencyAndUnits currencies={currencies} />
      </Panel>
      <HouseholdFields path="households.a" heading="First household" />
      <HouseholdFields path="households.b" heading="Second household" />
    </NotebookForm>
  )
}

function HouseholdFields({ path, heading }: { path: string; heading: string }) {
  return (
    <Panel heading={heading}>
      <TextField
        path={`${path}.name`}
        label="Called"
        hint="Short, as it should stand everywhere: “Household at no. 12”."
      />
      <RowsField
        path={`${path}.parties`}
        label="Parties"
        hint="Everyone whose name is on the title, and anyone else who binds this household. Each party signs for itself."
        rowLabel={(row) => String((row as { name?: unknown } | null)?.name ?? '')}
        empty={{ name: '', capacity: 'owner', address: '', parcel: '' }}
        addLabel="Add a party"
      >
        {(row) => (
          <>
            <TextField path={`${row}.name`} label="Full name, as on the title" />
            <ChoiceField
              path={`${row}.capacity`}
              label="Signs as"
              options={capacities.map((capacity) => ({ value: capacity, label: capacityWords[capacity] }))}
            />
            <Shown path={`${row}.capacity`} is="tenant">
              <Caution title="A tenant signs">
                <p>{tenantCaution}</p>
              </Caution>
            </Shown>
            <FieldLine>
              <TextField path={`${row}.address`} label="Address" />
              <TextField path={`${row}.parcel`} label="Parcel or lot" />
            </FieldLine>
          </>
        )}
      </RowsField>
    </Panel>
  )
}
