'use client'

import { useState } from 'react'
import { textOf } from '../../../lib/words/rowReadingText.ts'
import { startingTopic, startingTopics } from '../../../lib/words/startingTerms.ts'
import { Caution } from '../../ui/Caution.tsx'
import { BeforeSaving } from '../../ui/draft/BeforeSaving.tsx'
import { useDraft } from '../../ui/draft/draftContext.ts'
import { getAt, setAt } from '../../ui/draft/draftPath.ts'
import { formWords } from '../../ui/draft/formWords.ts'
import { RowsField } from '../../ui/draft/RowsField.tsx'
import { TextField } from '../../ui/draft/TextField.tsx'
import type { SaveAction } from '../../ui/draft/useSaving.ts'
import { NotebookForm } from './NotebookForm.tsx'

/** What both households settle in words, topic by topic. */
export function TermsForm({ initial, base, save }: { initial: object; base: string; save: SaveAction }) {
  return (
    <NotebookForm initial={initial} base={base} save={save} saveLabel="Save the terms">
      <MissingTopics />
      <RowsField
        path="terms"
        label="Terms"
        rowLabel={(row) => String((row as { topic?: unknown } | null)?.topic ?? '')}
        empty={{ topic: '', text: '' }}
        addLabel="Add a topic of your own"
        reading={(row) => textOf(row, 'text')}
        besides={(row) => <TermCaution row={row} />}
      >
        {(row) => <TermFields row={row} />}
      </RowsField>
    </NotebookForm>
  )
}

function TermFields({ row }: { row: string }) {
  const { draft, change, ready } = useDraft()
  const [before, setBefore] = useState<{ readonly text: unknown } | null>(null)
  const known = startingTopic(String(getAt(draft, `${row}.topic`) ?? ''))
  const text = getAt(draft, `${row}.text`)
  return (
    <>
      <TextField path={`${row}.topic`} label="Topic" hint={known?.about} />
      <TextField path={`${row}.text`} label="What you settle" multiline rows={5} />
      {known?.wordings.some((wording) => wording.text !== text) ? (
        <div className="wordings">
          <p className="field-hint">Begin again from:</p>
          <div className="button-row">
            {known.wordings
              .filter((wording) => wording.text !== text)
              .map((wording) => (
                <button
                  key={wording.label}
                  type="button"
                  className="button button-plain"
                  disabled={!ready}
                  onClick={() => {
                    setBefore({ text })
                    change((old) => setAt(old, `${row}.text`, wording.text))
                  }}
                >
                  {wording.label}
                </button>
              ))}
          </div>
        </div>
      ) : null}
      {before === null || before.text === text ? null : (
        <p className="rows-removed" role="status">
          {formWords.writtenOver}
          <BeforeSaving path={`${row}.text`} />{' '}
          <button
            type="button"
            className="button button-plain"
            onClick={() => {
              setBefore(null)
              change((old) => setAt(old, `${row}.text`, before.text))
            }}
          >
            {formWords.putBackText}
          </button>
        </p>
      )}
    </>
  )
}

function TermCaution({ row }: { row: string }) {
  const { draft } = useDraft()
  const known = startingTopic(String(getAt(draft, `${row}.topic`) ?? ''))
  return known?.caution ? (
    <Caution slim>
      <p>{known.caution}</p>
    </Caution>
  ) : null
}

/** Topics of the starting set that the notebook does not have: offered, never put in unasked. */
function MissingTopics() {
  const { draft, change, ready } = useDraft()
  const terms = getAt(draft, 'terms')
  const list = Array.isArray(terms) ? terms : []
  const missing = startingTopics.filter(
    (one) => !list.some((term) => (term as { topic?: string }).topic?.trim() === one.topic),
  )
  if (missing.length === 0) return null
  return (
    <div className="wordings">
      <p className="field-hint">Not settled here yet; press one to begin from a wording:</p>
      <div className="button-row">
        {missing.map((one) => (
          <button
            key={one.topic}
            type="button"
            className="button button-plain"
            disabled={!ready}
            onClick={() =>
              change((old) =>
                setAt(old, `terms[${list.length}]`, { topic: one.topic, text: one.wordings[0]?.text ?? '' }),
              )
            }
          >
            {one.topic}
          </button>
        ))}
      </div>
    </div>
  )
}
