'use client'

import { type ReactNode, startTransition, useActionState, useRef, useState } from 'react'
import type { ButtonWeight } from '../ButtonLink.tsx'
import { AskFirst } from './AskFirst.tsx'
import { formWords } from './formWords.ts'
import { pressFailure } from './pressFailure.ts'
import { useInSight } from './useInSight.ts'
import { useReady } from './useReady.ts'

/** What a press came to: refused with a reason, or done with a word about it. Empty before the first press. */
export type PressAnswer = { refused?: string | undefined; done?: string | undefined }
export type PressAction = (previous: PressAnswer, form: FormData) => Promise<PressAnswer>

/**
 * A small form around one button and one server action. `children` are its (hidden or visible) inputs; they keep what
 * was typed where the answer is a refusal, and that comes into sight. `confirm` is a question asked in the page before anything is sent.
 */
export function PressForm({
  action,
  label,
  labelFor,
  confirm,
  onlySaved = false,
  weight = 'plain',
  children,
}: {
  action: PressAction
  label: string
  /** Said after the label to those who hear the page: which of many equal buttons this is. */
  labelFor?: string | undefined
  confirm?: string | undefined
  /** It is about what is saved: not pressed while a form of the page holds something that is not. */
  onlySaved?: boolean | undefined
  weight?: Exclude<ButtonWeight, 'quiet'> | undefined
  children?: ReactNode
}) {
  const ready = useReady()
  const form = useRef<HTMLFormElement>(null)
  const busy = useRef(false)
  const [answer, press, pending] = useActionState<PressAnswer, FormData>(async (previous, data) => {
    try {
      const next = await action(previous, data)
      if (next?.done !== undefined) form.current?.reset()
      return next ?? {}
    } catch (error) {
      return { refused: pressFailure(error) }
    } finally {
      busy.current = false
    }
  }, {})
  const [unsaved, setUnsaved] = useState(false)
  const waiting = !ready || pending
  const said = useInSight<HTMLParagraphElement>(answer, answer.refused !== undefined || unsaved)
  return (
    <form
      className="press-form"
      method="post"
      // The answer says in our own words what would be right, and stays to be read.
      noValidate
      ref={form}
      onSubmit={(event) => {
        // Not by the form's own action: React would empty the inputs even where the answer is a refusal.
        event.preventDefault()
        if (busy.current) return
        const left = onlySaved && document.querySelector('form.draft-form[data-unsaved]') !== null
        setUnsaved(left)
        if (left) return
        busy.current = true
        const data = new FormData(event.currentTarget)
        startTransition(() => press(data))
      }}
    >
      {children}
      {confirm === undefined ? (
        <button type="submit" className={`button button-${weight}`} disabled={waiting}>
          {label}
          {labelFor === undefined ? null : <span className="only-read-out">: {labelFor}</span>}
        </button>
      ) : (
        <AskFirst label={label} question={confirm} weight={weight} disabled={waiting} submits />
      )}
      <p
        className="press-answer"
        ref={said}
        role="status"
        data-kind={answer.refused === undefined && !unsaved ? 'done' : 'refused'}
      >
        {pending
          ? formWords.working
          : unsaved
            ? formWords.pressUnsaved
            : (answer.refused ?? answer.done ?? '')}
      </p>
    </form>
  )
}
