'use client'

import { fieldId } from './fieldId.ts'
import { formWords } from './formWords.ts'
import { goTo } from './goTo.ts'
import { nearestField } from './rowFaults.ts'
import type { Fault } from './saveAnswer.ts'
import { useAttention } from './useAttention.ts'

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
  const box = useAttention(attempt)
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
                    const target = document.getElementById(id)
                    if (target !== null) goTo(target)
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
