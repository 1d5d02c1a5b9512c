'use client'

import { useEffect, useRef, useState } from 'react'
import { formWords } from './formWords.ts'

/**
 * A button that asks once more before it does something that takes away. The question stands in the page, where the
 * button was, and the focus goes to it.
 */
export function AskFirst({
  label,
  question,
  disabled,
  submits = false,
  weight = 'grave',
  onYes,
}: {
  label: string
  question: string
  disabled: boolean
  /** The Yes button submits the form around it instead of calling `onYes`. */
  submits?: boolean | undefined
  weight?: 'grave' | 'plain' | 'main' | undefined
  onYes?: (() => void) | undefined
}) {
  const [asking, setAsking] = useState(false)
  const first = useRef<HTMLButtonElement>(null)
  const wasAsking = useRef(false)
  const box = useRef<HTMLFieldSetElement>(null)
  const wasWaiting = useRef(disabled)
  // Only once the answer is there: a button that is taken away while it is pressed submits nothing.
  useEffect(() => {
    if (wasWaiting.current && !disabled) setAsking(false)
    wasWaiting.current = disabled
  }, [disabled])
  useEffect(() => {
    if (asking) box.current?.focus()
    else if (wasAsking.current) first.current?.focus()
    wasAsking.current = asking
  }, [asking])
  if (!asking) {
    return (
      <button
        type="button"
        ref={first}
        className={`button button-${weight}`}
        disabled={disabled}
        onClick={() => setAsking(true)}
      >
        {label}
      </button>
    )
  }
  return (
    <fieldset className="ask-first" ref={box} tabIndex={-1}>
      <legend>{question}</legend>
      <div className="button-row">
        <button
          type={submits ? 'submit' : 'button'}
          className={`button button-${weight}`}
          disabled={disabled}
          onClick={() => {
            onYes?.()
            if (!submits) setAsking(false)
          }}
        >
          {formWords.removeYes(label)}
        </button>
        <button
          type="button"
          className="button button-quiet"
          disabled={disabled}
          onClick={() => setAsking(false)}
        >
          {formWords.removeNo}
        </button>
      </div>
    </fieldset>
  )
}
