'use client'

import { type MessageKindName, messageKindMeaning, messageKindWords } from '../../../lib/words/messageText.ts'
import { type Choice, ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { DraftForm } from '../../ui/draft/DraftForm.tsx'
import { Shown } from '../../ui/draft/Shown.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import type { SaveAction } from '../../ui/draft/useSaving.ts'

/** Says something beside an item. `answerable`: what the other household said here. */
export function MessageForm({ save, answerable }: { save: SaveAction; answerable: readonly Choice[] }) {
  const kinds: readonly MessageKindName[] =
    answerable.length === 0
      ? ['remark', 'proposal', 'objection']
      : ['remark', 'proposal', 'objection', 'answer']
  return (
    <DraftForm
      initial={{ kind: 'remark', answers: answerable.at(-1)?.value ?? '', text: '' }}
      base="new"
      save={save}
      saveLabel="Say it"
      form="message"
      sends="entry known again"
    >
      <ChoiceField
        path="kind"
        label="This is"
        options={kinds.map((value) => ({
          value,
          label: messageKindWords[value],
          hint: messageKindMeaning[value],
        }))}
      />
      <Shown path="kind" is="answer">
        <ChoiceField path="answers" label="It answers" options={answerable} />
      </Shown>
      <TextField
        path="text"
        label="What you want to say"
        hint="The other household reads it at once. What was said stays on record, and can’t be taken back."
        multiline
        rows={4}
      />
    </DraftForm>
  )
}
