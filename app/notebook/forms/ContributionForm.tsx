'use client'

import { contributionKinds } from '../../../lib/core/agreement/notebook.ts'
import { entryFieldWords } from '../../../lib/words/entryFieldWords.ts'
import { contributionChoiceWords } from '../../../lib/words/labels.ts'
import { transferFieldWords } from '../../../lib/words/transferText.ts'
import { type Choice, ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { DateField } from '../../ui/draft/DateField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { Shown } from '../../ui/draft/Shown.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import type { SaveAction } from '../../ui/draft/useSaving.ts'
import { HoursFields, type TaskChoice } from './HoursFields.tsx'
import { NotebookForm } from './NotebookForm.tsx'
import { type FormNames, householdChoices } from './partWords.ts'
import { EarlyDayTick, type EntryBooks, SpentFields } from './SpentFields.tsx'

/** One new entry in the book. */
export function ContributionForm({
  initial,
  base,
  save,
  names,
  items,
  tasks,
  books,
}: {
  initial: object
  base: string
  save: SaveAction
  names: FormNames
  items: readonly Choice[]
  tasks: readonly TaskChoice[]
  books: EntryBooks
}) {
  return (
    <NotebookForm initial={initial} base={base} save={save} saveLabel="Enter it" sends="entry known again">
      <ChoiceField
        path="household"
        label="Given by"
        hint={entryFieldWords.givenByHint}
        options={householdChoices(names)}
      />
      <ChoiceField
        path="kind"
        label="What was given"
        options={contributionKinds.map((kind) => ({ value: kind, label: contributionChoiceWords[kind] }))}
      />
      <Shown path="kind" is="hours">
        <HoursFields names={names} items={items} tasks={tasks} />
      </Shown>
      <Shown path="kind" is={contributionKinds.filter((kind) => kind !== 'hours')}>
        <FigureField path="amount" label="Amount" suffix={names.currency} />
      </Shown>
      <FieldLine>
        <DateField path="date" label="On" />
        <Shown path="kind" is={contributionKinds.filter((kind) => kind !== 'hours')}>
          <ChoiceField path="for" label="For" optionalLabel="the whole fence" options={items} />
        </Shown>
      </FieldLine>
      <Shown path="kind" is="transfer">
        <TextField
          path="means"
          label={transferFieldWords.means}
          hint={`${transferFieldWords.meansHint} ${transferFieldWords.rule}`}
        />
      </Shown>
      <EarlyDayTick startedOn={books.startedOn} />
      <SpentFields names={names} books={books} />
      <TextField path="note" label="Note" hint="Such as the receipt’s number." />
    </NotebookForm>
  )
}
