'use client'

import { type SubmitEvent, startTransition, useActionState, useRef, useState } from 'react'
import { tooLargeText } from '../../../lib/words/tooLargeText.ts'
import { importRefusals, workWords } from '../../../lib/words/workText.ts'
import { AskFirst } from '../draft/AskFirst.tsx'
import type { PressAction, PressAnswer } from '../draft/PressForm.tsx'
import { pressFailure } from '../draft/pressFailure.ts'
import { useReady } from '../draft/useReady.ts'
import { askForWork } from './askForWork.ts'
import { useStop } from './useStop.ts'
import { WorkProgress } from './WorkProgress.tsx'

const words = workWords.import

type Standing = { readonly said: string; readonly fraction: number | undefined; readonly stoppable: boolean }

/**
 * Brings a notebook file: with script it is sent and read first, with how far that is and a way to stop it, and only then
 * stored, by a press that nothing has to be waited for; without, as an ordinary form that `action` takes.
 */
export function ImportForm({
  action,
  label,
  fileLabel,
  largest,
  confirm,
}: {
  action: PressAction
  label: string
  fileLabel: string
  /** Bytes of a file at most. */
  largest: number
  /** A question asked in the page before anything is sent; what takes something away is asked about. */
  confirm?: string | undefined
}) {
  const ready = useReady()
  const busy = useRef(false)
  const { begin, stop } = useStop()
  const [standing, setStanding] = useState<Standing>()
  const [said, setSaid] = useState<PressAnswer>({})
  // Only a form sent without script comes by this one: with script its failures would take the page away.
  const [plain, send] = useActionState<PressAnswer, FormData>(action, {})
  const [answer, store, storing] = useActionState<PressAnswer, FormData>(async (previous, form) => {
    try {
      return (await action(previous, form)) ?? {}
    } catch (error) {
      return { refused: pressFailure(error) }
    } finally {
      busy.current = false
      setStanding(undefined)
    }
  }, {})

  const end = (next: PressAnswer) => {
    busy.current = false
    setStanding(undefined)
    setSaid(next)
  }
  async function submit(event: SubmitEvent<HTMLFormElement>) {
    // Then React does not send it by the action.
    event.preventDefault()
    if (busy.current) return
    const file = new FormData(event.currentTarget).get('file')
    if (!(file instanceof File) || file.name === '') return setSaid({ refused: importRefusals.none })
    if (file.size > largest) return setSaid({ refused: tooLargeText(file.size, largest) })
    busy.current = true
    setSaid({})
    const sent = (bytes: number): Standing =>
      bytes < file.size
        ? { said: words.sending(bytes, file.size), fraction: bytes / file.size, stoppable: true }
        : { said: words.reading, fraction: undefined, stoppable: true }
    setStanding(sent(0))
    const ended = await askForWork('/start/import', file, begin(), {
      // What goes around a body may count, too.
      onSent: (bytes) => setStanding(sent(Math.min(bytes, file.size))),
      onLine: ({ stage }) => {
        if (stage === 'checking') setStanding({ said: words.checking, fraction: undefined, stoppable: true })
      },
    })
    if (ended.kind === 'stopped') return end({ done: words.stopped })
    if (ended.kind !== 'told') return end({ refused: workWords[ended.kind] })
    const { held, refused } = ended.line
    if (refused !== undefined) return end({ refused: String(refused) })
    setStanding({ said: words.storing, fraction: 1, stoppable: false })
    const form = new FormData()
    // It could not be held where many are sent at once; then it goes with the press itself.
    if (typeof held === 'string') form.set('held', held)
    else form.set('file', file)
    startTransition(() => store(form))
  }

  const shown = said.refused !== undefined || said.done !== undefined ? said : { ...plain, ...answer }
  const working = standing !== undefined || storing
  return (
    <form className="press-form" action={send} onSubmit={submit}>
      <div className="field">
        <label className="field-label" htmlFor="file">
          {fileLabel}
        </label>
        <input id="file" name="file" type="file" accept=".json,application/json" />
      </div>
      {confirm === undefined ? (
        <button type="submit" className="button button-plain" disabled={working}>
          {label}
        </button>
      ) : (
        <AskFirst label={label} question={confirm} weight="grave" disabled={!ready || working} submits />
      )}
      {standing === undefined ? null : (
        <WorkProgress
          label={words.label}
          said={standing.said}
          fraction={standing.fraction}
          onStop={standing.stoppable ? stop : undefined}
        />
      )}
      <p className="press-answer" role="status" data-kind={shown.refused === undefined ? 'done' : 'refused'}>
        {working ? '' : (shown.refused ?? shown.done ?? '')}
      </p>
    </form>
  )
}
