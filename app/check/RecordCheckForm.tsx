'use client'

import { useActionState, useRef, useState } from 'react'
import { sizeWords } from '../../lib/words/fileText.ts'
import { checkRefusals, workWords } from '../../lib/words/workText.ts'
import { askForWork } from '../ui/work/askForWork.ts'
import { useStop } from '../ui/work/useStop.ts'
import { WorkProgress } from '../ui/work/WorkProgress.tsx'
import type { CheckAnswer } from './checkedRecord.ts'

const words = workWords.check

type Standing = { readonly file: string; readonly said: string; readonly fraction: number | undefined }

const kindWords = { agrees: 'Agrees', fails: 'Does not hold', told: 'To know' } as const

/** A place to drop a PDF, how far it is, and what was found in it. */
export function RecordCheckForm({
  check,
  largest,
}: {
  /** Takes the form where there is no script. */
  check: (previous: unknown, form: FormData) => Promise<CheckAnswer>
  /** Bytes of a file at most. */
  largest: number
}) {
  const input = useRef<HTMLInputElement>(null)
  const [over, setOver] = useState(false)
  const { begin, stop } = useStop()
  // Only a form sent without script comes by this one.
  const [plain, send] = useActionState<CheckAnswer | undefined, FormData>(check, undefined)
  const [sent, setSent] = useState<CheckAnswer>()
  const [standing, setStanding] = useState<Standing>()
  const answer = sent ?? plain

  async function checkFile(file: File | undefined) {
    if (standing !== undefined) return
    if (file === undefined || file.size === 0) return setSent({ refused: checkRefusals.none })
    if (file.size > largest)
      return setSent({ refused: checkRefusals.tooLarge(sizeWords(file.size), sizeWords(largest)) })
    setSent(undefined)
    setStanding({ file: file.name, said: words.sending(0, file.size), fraction: 0 })
    const onSent = (bytes: number) => {
      const fraction = Math.min(1, bytes / file.size)
      const said = fraction < 1 ? words.sending(bytes, file.size) : words.checking
      setStanding({ file: file.name, said, fraction: fraction < 1 ? fraction : undefined })
    }
    const ended = await askForWork('/check/record', file, begin(), { onSent, onLine: () => undefined })
    setStanding(undefined)
    if (ended.kind === 'stopped') return setSent({ refused: words.stopped })
    if (ended.kind !== 'told') return setSent({ refused: workWords[ended.kind] })
    const found = ended.line.answer as CheckAnswer
    setSent('refused' in found ? found : { ...found, name: file.name.slice(0, 120) })
  }

  return (
    <>
      <form
        className="record-drop"
        action={send}
        data-over={over || undefined}
        onSubmit={(event) => {
          event.preventDefault()
          void checkFile(input.current?.files?.[0])
        }}
        onDragOver={(event) => {
          event.preventDefault()
          setOver(true)
        }}
        onDragLeave={() => setOver(false)}
        onDrop={(event) => {
          event.preventDefault()
          setOver(false)
          void checkFile(event.dataTransfer.files[0])
        }}
      >
        <label className="field-label" htmlFor="record">
          Locked copy (PDF, at most 20 MB): drop it here, or choose it
        </label>
        <input id="record" name="record" type="file" accept=".pdf,application/pdf" ref={input} />
        <button type="submit" className="button button-main" disabled={standing !== undefined}>
          Check it
        </button>
      </form>
      {standing === undefined ? null : (
        <WorkProgress
          label={words.label(standing.file)}
          said={standing.said}
          fraction={standing.fraction}
          onStop={stop}
        />
      )}
      <div role="status" className="record-findings">
        {answer === undefined || standing !== undefined ? null : <Findings answer={answer} />}
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
