'use client'

import { skillWords } from '../../../lib/words/arrangementText.ts'
import { DateField } from '../../ui/draft/DateField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import type { RemoveAction } from '../../ui/draft/useSaving.ts'
import { InstalmentFields } from './InstalmentFields.tsx'
import type { MoreInstalment } from './moreInstalment.ts'
import { NotebookForm } from './NotebookForm.tsx'
import type { PartFormProps } from './partForm.ts'

/** What is agreed about money and hours beside the shares: rates against a quote, a tolerance, instalments. */
export function ArrangementsForm({
  initial,
  base,
  save,
  remove,
  names,
  planned,
  more,
}: PartFormProps & {
  remove: RemoveAction
  /** What each household brings in money as planned, in words. */
  planned: { readonly a: string; readonly b: string } | undefined
  more?: MoreInstalment | undefined
}) {
  return (
    <NotebookForm
      initial={initial}
      base={base}
      save={save}
      saveLabel="Save what is agreed"
      remove={remove}
      removeLabel="Take all of this out"
      removeQuestion="Take out rates, tolerance and instalments? Nobody has to mark them then; for a day you can put them back, under Changes."
    >
      {(['skilled', 'plain'] as const).map((skill) => (
        <fieldset key={skill} className="field special-post">
          <legend className="field-label">{skillWords[skill]}</legend>
          <FieldLine>
            <FigureField
              path={`arrangements.rates.${skill}.rate`}
              label="Agreed rate an hour"
              suffix={names.currency}
            />
            <FigureField
              path={`arrangements.rates.${skill}.quote`}
              label="A local quote for the same work"
              hint="What somebody near you asks for an hour."
              suffix={names.currency}
            />
          </FieldLine>
          <FieldLine>
            <TextField path={`arrangements.rates.${skill}.quoteFrom`} label="The quote is from" />
            <DateField path={`arrangements.rates.${skill}.on`} label="Given on" />
          </FieldLine>
        </fieldset>
      ))}
      <FigureField
        path="arrangements.tolerance"
        label="An item may come dearer by"
        hint="From 0 to 100. Beyond it the item needs both marks again. Empty: nothing is agreed."
        suffix="percent"
      />
      <InstalmentFields names={names} planned={planned} more={more} />
      <TextField path="arrangements.notes" label="Notes" multiline />
    </NotebookForm>
  )
}
