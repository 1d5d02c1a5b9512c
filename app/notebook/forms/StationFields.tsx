'use client'

import { stationReading, textOf } from '../../../lib/words/rowReadingText.ts'
import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { textAt } from '../../ui/draft/draftPath.ts'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { Fold } from '../../ui/draft/Fold.tsx'
import { LengthField } from '../../ui/draft/LengthField.tsx'
import { RowsField } from '../../ui/draft/RowsField.tsx'
import { type FormNames, householdChoices } from './partWords.ts'

/** Points along the line: setback, ground, and whether the line turns there. */
export function StationFields({ names }: { names: FormNames }) {
  return (
    <RowsField
      path="line.stations"
      label="Stations"
      hint="Points along the line, in order from its start. Ground heights are measured above one level that you choose, such as the ground at the start; below it they are negative."
      rowLabel={(row) => textOf(row, 'at')}
      empty={{ at: '', setback: { side: '', distance: '' }, gradeA: '', gradeB: '', gradeFence: '' }}
      addLabel="Add a station"
      reading={(row) => stationReading(row, names)}
    >
      {(row) => (
        <>
          <FieldLine>
            <LengthField path={`${row}.at`} label="Distance from the start" />
            <LengthField path={`${row}.setback.distance`} label="Setback of the fence from the line" />
          </FieldLine>
          <ChoiceField
            path={`${row}.setback.side`}
            label="The fence stands there on the land of"
            optionalLabel="Not said yet"
            options={householdChoices(names)}
          />
          <FieldLine>
            <LengthField path={`${row}.gradeA`} label={`Ground of ${names.a}`} />
            <LengthField path={`${row}.gradeB`} label={`Ground of ${names.b}`} />
            <LengthField path={`${row}.gradeFence`} label="Ground under the fence" />
          </FieldLine>
          <AngleFields path={`${row}.angle`} names={names} />
        </>
      )}
    </RowsField>
  )
}

function AngleFields({ path, names }: { path: string; names: FormNames }) {
  const { draft } = useDraft()
  const degrees = textAt(draft, `${path}.degrees`)
  return (
    <Fold
      label={degrees === '' ? 'The line turns here' : `The line turns here by ${degrees}°`}
      about={degrees === '' ? 'Only where it does not run straight on.' : undefined}
      paths={[path]}
    >
      <FieldLine>
        <FigureField
          path={`${path}.degrees`}
          label="Turns by"
          suffix="degrees"
          hint="Seen from above. 90 is a square corner."
        />
        <ChoiceField
          path={`${path}.toward`}
          label="Toward the land of"
          optionalLabel="Not said yet"
          options={householdChoices(names)}
        />
      </FieldLine>
    </Fold>
  )
}
