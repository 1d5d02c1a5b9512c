'use client'

import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { LengthField } from '../../ui/draft/LengthField.tsx'
import { Shown } from '../../ui/draft/Shown.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import { TickField } from '../../ui/draft/TickField.tsx'

export const shapeChoices = [
  { value: 'round', label: 'Round' },
  { value: 'square', label: 'Square' },
  { value: 'rectangular', label: 'Rectangular' },
]

export const materialChoices = [
  { value: 'steel', label: 'Steel' },
  { value: 'aluminium', label: 'Aluminium' },
  { value: 'wood', label: 'Wood' },
  { value: 'other', label: 'Something else' },
]

/** Shape and size of something cut to length. */
export function SizeFields({ path }: { path: string }) {
  return (
    <>
      <ChoiceField path={`${path}.shape`} label="Shape" optionalLabel="Not said yet" options={shapeChoices} />
      <FieldLine>
        <LengthField path={`${path}.outside`} label="Outside size" hint="Diameter, or the wider side." />
        <Shown path={`${path}.shape`} is="rectangular">
          <LengthField path={`${path}.thickness`} label="Narrower side" />
        </Shown>
        <LengthField path={`${path}.wall`} label="Wall" hint="Empty: solid." />
      </FieldLine>
    </>
  )
}

/** A post, rail, frame or header: what it is cut from. */
export function MemberFields({ path }: { path: string }) {
  return (
    <>
      <TextField path={`${path}.what`} label="What it is" hint="Such as “reclaimed pipe”." />
      <SizeFields path={path} />
      <FieldLine>
        <ChoiceField
          path={`${path}.material`}
          label="Material"
          optionalLabel="Not said yet"
          options={materialChoices}
        />
        <FigureField
          path={`${path}.density`}
          label="Density"
          suffix="kg/m³"
          hint="Empty: steel 7850, aluminium 2700."
        />
      </FieldLine>
      <FieldLine>
        <LengthField path={`${path}.stock`} label="Bought in lengths of" />
        <LengthField path={`${path}.kerf`} label="Lost at each cut" />
        <FigureField path={`${path}.waste`} label="Waste" suffix="%" />
      </FieldLine>
      <TickField path={`${path}.reclaimed`} label="Reclaimed stock" />
    </>
  )
}

/** Hole of a post. */
export function HoleFields({ path }: { path: string }) {
  return (
    <FieldLine>
      <LengthField path={`${path}.hole`} label="Hole diameter" hint="Empty: no hole, driven or on a plate." />
      <LengthField path={`${path}.depth`} label="Hole depth" />
      <LengthField path={`${path}.gravel`} label="Gravel at the bottom" />
    </FieldLine>
  )
}
