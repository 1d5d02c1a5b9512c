'use client'

import { DateField } from '../../ui/draft/DateField.tsx'
import { FieldLine } from '../../ui/draft/FieldLine.tsx'
import { FigureField } from '../../ui/draft/FigureField.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import { AnswerDayShown } from './AnswerDayShown.tsx'
import { NotebookForm } from './NotebookForm.tsx'
import type { PartFormProps } from './partForm.ts'

/** The words and days of the first letter; where, cost and split come out of the notebook. */
export function LetterForm({ initial, base, save, names }: PartFormProps) {
  return (
    <NotebookForm initial={initial} base={base} save={save} saveLabel="Save the letter">
      <TextField
        path="letter.wrong"
        label="What is wrong with the old fence"
        hint="What anyone can see who walks along it: rotten posts, a lean, holes."
        multiline
      />
      <TextField path="letter.proposed" label="What you propose" multiline />
      <FieldLine>
        <DateField path="letter.workFrom" label="The work would begin on" />
        <DateField path="letter.workTo" label="It would be done by" />
      </FieldLine>
      <TextField
        path="letter.answerTo"
        label="How to answer"
        hint="Where you can be reached besides the notebook: a door, a letter box, a telephone number."
        multiline
        rows={2}
      />
      <FieldLine>
        <DateField path="letter.on" label="Day of the letter" />
        <FigureField
          path="letter.noticeDays"
          label="Notice"
          suffix="days"
          hint="How long the answer may take, as somebody told you. Empty: nobody did."
        />
      </FieldLine>
      <AnswerDayShown />
      <TextField
        path="letter.saidBy"
        label="Who said that this notice is to be given"
        hint="An office, a lawyer, a text that you read, and the day."
      />
      <DateField
        path="letter.answerBy"
        label="Answer by"
        hint={`Empty: the end of the notice. A later answer from ${names.b} still counts.`}
      />
    </NotebookForm>
  )
}
