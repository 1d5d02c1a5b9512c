'use client'

import { firstWays } from '../../../lib/core/shares/firstSplit.ts'
import { firstSplitWords, firstWayHints } from '../../../lib/words/firstSplitText.ts'
import { principleWords } from '../../../lib/words/labels.ts'
import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { LengthField } from '../../ui/draft/LengthField.tsx'
import { Shown } from '../../ui/draft/Shown.tsx'
import type { SaveAction } from '../../ui/draft/useSaving.ts'
import { Panel } from '../../ui/Panel.tsx'
import { FirstSplitResult } from './FirstSplitResult.tsx'
import { NotebookForm } from './NotebookForm.tsx'
import { type FormNames, householdChoices } from './partWords.ts'

/** One stretch of fence, its cost, and a way to share it, with what it asks of each household below, as it is typed. */
export function FirstSplitForm({
  initial,
  save,
  names,
  digits,
}: {
  initial: object
  save: SaveAction
  names: FormNames
  digits: number
}) {
  const { currency } = names
  return (
    <NotebookForm initial={initial} base="new" save={save} saveLabel={firstSplitWords.save}>
      <Panel heading={firstSplitWords.fence}>
        <FieldLine>
          <LengthField path="length" label="Length" hint="Such as “60 ft” or “18.5 m”." />
          <LengthField path="height" label="Height" hint="May be left open." />
        </FieldLine>
      </Panel>
      <Panel heading={firstSplitWords.costs}>
        <FigureField path="materials" label="All materials" suffix={currency} hint="A rough sum will do." />
        <FieldLine>
          <FigureField path="hours" label="All the work" suffix="hours" />
          <FigureField path="rate" label="An hour of it is worth" suffix={currency} />
        </FieldLine>
        <ChoiceField
          path="by"
          label="The work is done by"
          options={[...householdChoices(names), { value: 'hired', label: 'Somebody who is paid' }]}
        />
      </Panel>
      <Panel heading={firstSplitWords.way}>
        <ChoiceField
          path="way"
          label="Share it by"
          options={firstWays.map((way) => ({
            value: way,
            label: principleWords[way],
            hint: firstWayHints[way],
          }))}
        />
        <Shown path="way" is="length">
          <FieldLine>
            <LengthField path="frontA" label={`Along the ground of ${names.a}`} />
            <LengthField path="frontB" label={`Along the ground of ${names.b}`} />
          </FieldLine>
        </Shown>
        <Shown path="way" is="difference">
          <FigureField
            path="basic"
            label={firstSplitWords.basic}
            suffix={currency}
            hint="With the work in it."
          />
          <ChoiceField path="wants" label="More than that is wanted by" options={householdChoices(names)} />
        </Shown>
      </Panel>
      <FirstSplitResult names={names} digits={digits} />
    </NotebookForm>
  )
}
