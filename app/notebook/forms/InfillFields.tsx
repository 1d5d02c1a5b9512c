'use client'

import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { LengthField } from '../../ui/draft/LengthField.tsx'
import { RowsField } from '../../ui/draft/RowsField.tsx'
import { Shown } from '../../ui/draft/Shown.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import { TickField } from '../../ui/draft/TickField.tsx'
import { materialChoices } from './MemberFields.tsx'
import { WeighedFields } from './WeighedFields.tsx'

/** The layers between the posts: rolls, panels, boards, strips woven into a mesh. */
export function InfillFields({ path }: { path: string }) {
  return (
    <RowsField
      path={path}
      label="Infill"
      rowLabel={(row) => String((row as { what?: unknown } | null)?.what ?? '')}
      empty={{ kind: 'roll', what: '', height: '', ground: '', waste: '' }}
      addLabel="Add a layer"
    >
      {(row) => (
        <>
          <ChoiceField
            path={`${row}.kind`}
            label="Kind"
            options={[
              { value: 'roll', label: 'By the roll' },
              { value: 'panel', label: 'Panels' },
              { value: 'board', label: 'Boards' },
              { value: 'strip', label: 'Strips woven into a mesh' },
            ]}
          />
          <TextField path={`${row}.what`} label="What it is" />
          <FieldLine>
            <LengthField
              path={`${row}.height`}
              label="Height of this layer"
              hint="Empty: the agreed height."
            />
            <LengthField path={`${row}.ground`} label="Left open under it" />
            <FigureField path={`${row}.waste`} label="Waste" suffix="%" />
          </FieldLine>
          <Shown path={`${row}.kind`} is="roll">
            <FieldLine>
              <LengthField path={`${row}.roll`} label="Length of a roll" />
              <LengthField path={`${row}.lap`} label="Lap" />
              <LengthField path={`${row}.wrap`} label="Wrap at each end" />
            </FieldLine>
          </Shown>
          <Shown path={`${row}.kind`} is="panel">
            <LengthField path={`${row}.width`} label="Width of a panel" />
            <TickField
              path={`${row}.rakes`}
              label="The panel can follow a slope"
              hint="Welded panels can’t."
            />
          </Shown>
          <Shown path={`${row}.kind`} is="board">
            <FieldLine>
              <LengthField path={`${row}.width`} label="Width of a board" />
              <LengthField path={`${row}.gap`} label="Gap" />
              <LengthField path={`${row}.thickness`} label="Thickness" />
            </FieldLine>
          </Shown>
          <Shown path={`${row}.kind`} is="strip">
            <FieldLine>
              <LengthField path={`${row}.opening`} label="Height of a mesh opening" />
              <LengthField path={`${row}.width`} label="Width of a strip" />
              <FigureField
                path={`${row}.takeUp`}
                label="Take-up"
                hint="Strip per length of fence, as it weaves."
              />
            </FieldLine>
            <FieldLine>
              <LengthField
                path={`${row}.thickness`}
                label="Thickness"
                hint="With the material it gives the weight."
              />
              <ChoiceField
                path={`${row}.material`}
                label="Material"
                optionalLabel="Not said yet"
                options={materialChoices}
              />
            </FieldLine>
            <FieldLine>
              <LengthField path={`${row}.coilWidth`} label="Width of the coil" />
              <LengthField path={`${row}.coil`} label="Length of the coil" />
            </FieldLine>
          </Shown>
          <FigureField
            path={`${row}.solid`}
            label="Stops the wind"
            suffix="% of its outline"
            hint="Empty: worked out for boards and strips, else not known."
          />
          <WeighedFields path={`${row}.weight`} />
          <TickField path={`${row}.reclaimed`} label="Reclaimed stock" />
        </>
      )}
    </RowsField>
  )
}
