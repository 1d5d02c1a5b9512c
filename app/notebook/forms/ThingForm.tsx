'use client'

import { thingKinds } from '../../../lib/core/agreement/notebook.ts'
import { returnedThingKinds, valuedThingKinds } from '../../../lib/core/ledger/things.ts'
import { thingFieldWords, thingKindHints, thingKindWords } from '../../../lib/words/thingText.ts'
import { type Choice, ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { DateField } from '../../ui/draft/DateField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { Shown } from '../../ui/draft/Shown.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import { TickField } from '../../ui/draft/TickField.tsx'
import type { SaveAction } from '../../ui/draft/useSaving.ts'
import { NotebookForm } from './NotebookForm.tsx'
import { type FormNames, householdChoices } from './partWords.ts'

/** A tool, a leftover or salvage: what goes back has a day, what is kept or sold has a value and a household. */
export function ThingForm({
  initial,
  base,
  save,
  names,
  items,
  form,
}: {
  initial: object
  base: string
  save: SaveAction
  names: FormNames
  items: readonly Choice[]
  form: string
}) {
  const words = thingFieldWords
  return (
    <NotebookForm
      initial={initial}
      base={base}
      save={save}
      saveLabel={words.save}
      form={form}
      sends="entry known again"
    >
      <ChoiceField
        path="kind"
        label={words.kind}
        asRadios
        options={thingKinds.map((kind) => ({
          value: kind,
          label: thingKindWords[kind],
          hint: thingKindHints[kind],
        }))}
      />
      <TextField path="what" label={words.what} hint={words.whatHint} />
      <TextField path="from" label={words.from} />
      <Shown path="kind" is={returnedThingKinds}>
        <FieldLine>
          <DateField path="on" label={words.since} />
          <DateField path="due" label={words.due} />
          <DateField path="returned" label={words.returned} />
        </FieldLine>
      </Shown>
      <Shown path="kind" is={valuedThingKinds}>
        <DateField path="on" label={words.on} />
        <ChoiceField
          path="household"
          label={words.household}
          optionalLabel={words.nobody}
          options={householdChoices(names)}
        />
        <TickField path="sold" label={words.sold} />
        <FigureField path="value" label={words.value} hint={words.valueHint} suffix={names.currency} />
        <ChoiceField
          path="item"
          label={words.item}
          hint={words.itemHint}
          optionalLabel={words.noItem}
          options={items}
        />
      </Shown>
    </NotebookForm>
  )
}
