'use client'

import { useLayoutEffect, useState } from 'react'
import { type FieldName, fieldNameOn, namedEntries } from './entryNames.ts'
import { fieldId } from './fieldId.ts'
import { type Done, formWords } from './formWords.ts'
import { goTo } from './goTo.ts'
import { nearestField } from './rowFaults.ts'
import type { Fault } from './saveAnswer.ts'
import { useAttention } from './useAttention.ts'

/** What the fields are called, read off the page once they stand there: only there a field is with its row and group. */
function useFieldNames(ids: readonly (string | undefined)[]): readonly (FieldName | undefined)[] {
  const [names, setNames] = useState<readonly (FieldName | undefined)[]>([])
  const asked = ids.join(' ')
  useLayoutEffect(() => {
    setNames(asked.split(' ').map((id) => fieldNameOn(document, id)))
  }, [asked])
  return names
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
  done,
}: {
  faults: readonly Fault[]
  fields: Iterable<string>
  form: string
  attempt: number
  done: Done
}) {
  const box = useAttention(attempt)
  const known = [...fields]
  const ids = faults.map(({ path }) => {
    const field = nearestField(path, known)
    return field === undefined ? undefined : fieldId(form, field)
  })
  const names = useFieldNames(ids)
  const entries = namedEntries(faults.map(({ message }, at) => ({ message, name: names[at] })))
  return (
    <section className="summary summary-faults" ref={box} tabIndex={-1} aria-labelledby={`${form}-summary`}>
      <h2 id={`${form}-summary`}>{formWords.summaryTitle(faults.length, done)}</h2>
      <ul>
        {entries.map((words, at) => {
          const id = ids[at]
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: two faults may share path and wording
            <li key={at}>
              {id === undefined ? (
                words
              ) : (
                <a
                  href={`#${id}`}
                  onClick={(event) => {
                    event.preventDefault()
                    const target = document.getElementById(id)
                    if (target !== null) goTo(target)
                  }}
                >
                  {words}
                </a>
              )}
            </li>
          )
        })}
      </ul>
    </section>
  )
}
