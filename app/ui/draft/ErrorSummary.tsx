'use client'

import { useEffect, useRef } from 'react'
import { fieldId } from './fieldId.ts'
import { formWords } from './formWords.ts'
import { nearestField } from './rowFaults.ts'
import type { Fault } from './saveAnswer.ts'

/** Brings a field into view and puts the focus on it, opening whatever it is folded away in. */
function goTo(id: string) {
  const field = document.getElementById(id)
  if (field === null) return
  for (
    let fold = field.closest('details');
    fold !== null;
    fold = fold.parentElement?.closest('details') ?? null
  ) {
    fold.open = true
  }
  const label = field.closest('.field') ?? field
  label.scrollIntoView({ block: 'start' })
  field.focus({ preventScroll: true })
}

/**
 * All that has to be mended, each entry leading to its field. A fault whose path has no field on the page stands as
 * text. The focus comes here with every answer: `attempt` changes even where the faults are the same again.
 */
export function ErrorSummary({
  faults,
  fields,
  form,
  attempt,
}: {
  faults: readonly Fault[]
  fields: Iterable<string>
  form: string
  attempt: number
}) {
  const box = useRef<HTMLElement>(null)
  // biome-ignore lint/correctness/useExhaustiveDependencies: the count is what asks for the focus
  useEffect(() => {
    box.current?.focus()
  }, [attempt])
  const known = [...fields]
  return (
    <section className="summary summary-faults" ref={box} tabIndex={-1} aria-labelledby={`${form}-summary`}>
      <h2 id={`${form}-summary`}>{formWords.summaryTitle(faults.length)}</h2>
      <ul>
        {faults.map((fault, at) => {
          const field = nearestField(fault.path, known)
          const id = field === undefined ? undefined : fieldId(form, field)
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: two faults may share path and wording
            <li key={at}>
              {id === undefined ? (
                fault.message
              ) : (
                <a
                  href={`#${id}`}
                  onClick={(event) => {
                    event.preventDefault()
                    goTo(id)
                  }}
                >
                  {fault.message}
                </a>
              )}
            </li>
          )
        })}
      </ul>
    </section>
  )
}
