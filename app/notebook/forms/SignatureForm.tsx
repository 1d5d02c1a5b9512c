'use client'

import { DraftForm } from '../../ui/draft/DraftForm.tsx'
import { SignaturePad } from '../../ui/draft/SignaturePad.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import { TickField } from '../../ui/draft/TickField.tsx'
import type { SaveAction } from '../../ui/draft/useSaving.ts'

/** One party signs: typed name, a ticked sentence, and a drawn signature if it likes. */
export function SignatureForm({
  partyName,
  text,
  intent,
  save,
  form,
}: {
  partyName: string
  /** What is signed. */
  text: 'agreement' | 'account'
  intent: string
  save: SaveAction
  form: string
}) {
  return (
    <DraftForm
      initial={{ typedName: '', intent: false, drawing: '' }}
      base="unsigned"
      save={save}
      saveLabel={`Sign as ${partyName}`}
      form={form}
      sends="signature"
    >
      <TextField
        path="typedName"
        label="Type your full name"
        hint={`As it stands in the ${text}: ${partyName}.`}
        autoComplete="off"
      />
      <TickField path="intent" label={intent} />
      <SignaturePad path="drawing" label="Draw your signature, if you like" />
    </DraftForm>
  )
}
