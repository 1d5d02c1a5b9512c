'use client'

import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'

const bases = ['lb each', 'kg each', 'lb/ft', 'kg/m', 'lb/sq ft', 'kg/sq m']

/** What something weighs, and per what. */
export function WeighedFields({ path, label = 'Weight' }: { path: string; label?: string }) {
  return (
    <FieldLine>
      <FigureField path={`${path}.figure`} label={label} />
      <ChoiceField
        path={`${path}.per`}
        label={`${label} given in`}
        optionalLabel="not said"
        options={bases.map((base) => ({ value: base, label: base }))}
      />
    </FieldLine>
  )
}
