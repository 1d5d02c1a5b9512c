'use client'

import { costLineReading, labourLineReading, textOf } from '../../../lib/words/rowReadingText.ts'
import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { RowsField } from '../../ui/draft/RowsField.tsx'
import { Shown } from '../../ui/draft/Shown.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import { TickField } from '../../ui/draft/TickField.tsx'
import { type FormNames, householdChoices } from './partWords.ts'
import { RateField, SkillField } from './RateFields.tsx'

/** The cost lines of an item, or of its basic fence. */
export function MaterialsFields({ names, path = 'materials' }: { names: FormNames; path?: string }) {
  return (
    <RowsField
      path={path}
      label="Cost lines"
      hint="Each line is quantity × unit price, plus tax. A line without a price is not priced yet and counts as nothing."
      rowLabel={(row) => textOf(row, 'what')}
      empty={{ what: '', quantity: '', unit: '', unitPrice: '', taxPercent: '', suppliedBy: 'bought' }}
      addLabel="Add a cost line"
      reading={(row) => costLineReading(row, names)}
      unfinished={(row) => textOf(row, 'unitPrice') === ''}
    >
      {(row) => (
        <>
          <TextField path={`${row}.what`} label="What" />
          <FieldLine short>
            <FigureField path={`${row}.quantity`} label="Quantity" />
            <TextField path={`${row}.unit`} label="Unit" />
            <FigureField path={`${row}.unitPrice`} label="Price of one" suffix={names.currency} />
            <FigureField path={`${row}.taxPercent`} label="Tax" suffix="%" />
          </FieldLine>
          <ChoiceField
            path={`${row}.suppliedBy`}
            label="Comes from"
            options={[
              { value: 'bought', label: 'Bought' },
              { value: 'a', label: `${names.a}, in kind` },
              { value: 'b', label: `${names.b}, in kind` },
            ]}
          />
          <TickField path={`${row}.credit`} label="A credit: salvage or a return, taken off the cost" />
          <Shown path={`${row}.credit`} is={true}>
            <p className="field-hint">
              “Comes from” then says who receives the money: “bought” means it comes off a supplier’s bill.
            </p>
          </Shown>
        </>
      )}
    </RowsField>
  )
}

/** The labour lines of an item, or of its basic fence. */
export function LabourFields({ names, path = 'labour' }: { names: FormNames; path?: string }) {
  return (
    <RowsField
      path={path}
      label="Work lines"
      hint="Each line is hours × rate. A line without a rate counts its hours but no money. A line that does not count in the split is a gift: shown and thanked for, but in no sum; hired labour always counts."
      rowLabel={(row) => textOf(row, 'task')}
      empty={{ task: '', hours: '', rate: '', by: 'a' }}
      addLabel="Add a work line"
      reading={(row) => labourLineReading(row, names)}
      unfinished={(row) => textOf(row, 'rate') === ''}
    >
      {(row) => (
        <>
          <TextField path={`${row}.task`} label="Task" />
          <FieldLine short>
            <FigureField path={`${row}.hours`} label="Hours" suffix="h" />
            <RateField row={row} names={names} />
          </FieldLine>
          <SkillField row={row} names={names} />
          <ChoiceField
            path={`${row}.by`}
            label="Done by"
            options={[...householdChoices(names), { value: 'hired', label: 'Hired work' }]}
          />
          <TickField path={`${row}.counts`} label="Counts in the split" whenMissing />
          <Shown path={`${row}.counts`} is={[true, '']}>
            <FigureField
              path={`${row}.ceiling`}
              label="Most hours that count"
              hint="A ceiling: hours beyond it are the worker’s own, unless both marked more before. Empty: none."
              suffix="h"
            />
          </Shown>
        </>
      )}
    </RowsField>
  )
}
