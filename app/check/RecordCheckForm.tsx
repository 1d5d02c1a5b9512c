'use client'

import { startTransition, useActionState, useRef, useState } from 'react'
import { formWords } from '../ui/draft/formWords.ts'
import { pressFailure } from '../ui/draft/pressFailure.ts'
import { useReady } from '../ui/draft/useReady.ts'
import type { CheckAnswer } from './actions.ts'

const kindWords = { agrees: 'Agrees', fails: 'Does not hold', told: 'To know' } as const

/** A place to drop a PDF, and what was found in it. */
export function RecordCheckForm({
  check,
}: {
  check: (previous: unknown, form: FormData) => Promise<CheckAnswer>
}) {
  const ready = useReady()
  const input = useRef<HTMLInputElement>(null)
  const [over, setOver] = useState(false)
  const [answer, send, pending] = useActionState<CheckAnswer | undefined, FormData>(
    async (previous, form) => {
      try {
        return await check(previous, form)
      } catch (error) {
        return { refused: pressFailure(error) }
      }
    },
    undefined,
  )

  function checkFile(file: File | undefined) {
    const form = new FormData()
    if (file) form.set('record', file)
    startTransition(() => send(form))
  }

  return (
    <>
      <form
        className="record-drop"
        data-over={over || undefined}
        onSubmit={(event) => {
          event.preventDefault()
          checkFile(input.current?.files?.[0])
        }}
        onDragOver={(event) => {
          event.preventDefault()
          setOver(true)
        }}
        onDragLeave={() => setOver(false)}
        onDrop={(event) => {
          event.preventDefault()
          setOver(false)
          checkFile(event.dataTransfer.files[0])
        }}
      >
        <label className="field-label" htmlFor="record">
          Locked copy (PDF, at most 20 MB): drop it here, or choose it
        </label>
        <input id="record" name="record" type="file" accept=".pdf,application/pdf" ref={input} />
        <button type="submit" className="button button-main" disabled={!ready || pending}>
          Check it
        </button>
      </form>
      <div role="status" className="record-findings">
        {pending ? <p>{formWords.working}</p> : answer ? <Findings answer={answer} /> : null}
      </div>
    </>
  )
}

function Findings({ answer }: { answer: CheckAnswer }) {
  if ('refused' in answer) return <p>{answer.refused}</p>
  return (
    <>
      <h2>{answer.verdict}</h2>
      <p>{answer.name}</p>
      <dl className="record-lines">
        {answer.lines.map(({ kind, text }) => (
          <div key={text} data-kind={kind}>
            <dt>{kindWords[kind]}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      <h3>What this does not show</h3>
      <ul>
        {answer.notProved.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </>
  )
}
