'use client'

import { useEffect, useRef, useState } from 'react'
import {
  type ReaderContentName,
  readerContentWords,
  typedTextCaution,
} from '../../../lib/words/readerText.ts'
import { Caution } from '../../ui/Caution.tsx'
import { ChoiceField } from '../../ui/draft/ChoiceField.tsx'
import { CopyField } from '../../ui/draft/CopyField.tsx'
import { DateField } from '../../ui/draft/DateField.tsx'
import { DraftForm } from '../../ui/draft/DraftForm.tsx'
import type { SaveAnswer } from '../../ui/draft/saveAnswer.ts'
import { TextField } from '../../ui/draft/TextField.tsx'
import type { MadeLink } from '../server/readerActions.ts'

const contents: readonly ReaderContentName[] = ['summary', 'costs', 'everything']

/** Makes a link for a reader and shows its address once: it is stored nowhere but as a hash. */
export function ReaderLinkForm({
  make,
  through,
}: {
  make: (base: string, draft: unknown) => Promise<SaveAnswer | MadeLink>
  /** The day that is suggested as the last one. */
  through: string
}) {
  const [made, setMade] = useState<{ readonly address: string; readonly count: number }>()
  const shown = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (made) shown.current?.focus()
  }, [made])
  const save = async (base: string, draft: unknown): Promise<SaveAnswer> => {
    const answer = await make(base, draft)
    if (!('address' in answer)) return answer
    setMade((before) => ({ address: answer.address, count: (before?.count ?? 0) + 1 }))
    return { saved: true, base, note: 'The link is made. Copy it now.' }
  }
  return (
    <div className="reader-form">
      <DraftForm
        key={made?.count ?? 0}
        initial={{ label: '', content: 'summary', through }}
        base="new"
        save={save}
        saveLabel="Make the link"
        form="reader"
      >
        <TextField
          path="label"
          label="For whom"
          hint="Such as “the permit office” or “the bank”. The reader sees it too."
        />
        <ChoiceField
          path="content"
          label="What it shows"
          options={contents.map((value) => ({
            value,
            label: readerContentWords[value].name,
            hint: readerContentWords[value].holds,
          }))}
        />
        <Caution title="Look at what you typed">
          <p>{typedTextCaution}</p>
        </Caution>
        <DateField
          path="through"
          label="Works through"
          hint="The last day, by world time. At most five years ahead."
        />
      </DraftForm>
      {made === undefined ? null : (
        <div className="made-link" ref={shown} tabIndex={-1}>
          <CopyField
            label="The reader’s link"
            value={made.address}
            hint="Copy it now and hand it over. It is not shown again; if it is lost, make a new one and end this."
          />
        </div>
      )}
    </div>
  )
}
