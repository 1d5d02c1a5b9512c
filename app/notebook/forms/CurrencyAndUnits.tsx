'use client'

import { unitNames } from '../../../lib/words/startText.ts'
import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'

export type Currencies = readonly { readonly code: string; readonly name: string }[]

/** In what the notebook counts money and shows lengths. */
export function CurrencyAndUnits({ currencies }: { currencies: Currencies }) {
  return (
    <FieldLine>
      <ChoiceField
        path="currency"
        label="Currency"
        options={currencies.map(({ code, name }) => ({ value: code, label: `${code}, ${name}` }))}
      />
      <ChoiceField
        path="units"
        label="Show lengths in"
        hint="You may type lengths in either; they stay as typed."
        options={(['ft-in', 'metric'] as const).map((units) => ({ value: units, label: unitNames[units] }))}
      />
    </FieldLine>
  )
}
