'use client'

import type { Notebook } from '../../../../lib/core/agreement/notebook.ts'
import type { Household } from '../../../../lib/core/people/household.ts'
import type { Influence } from '../../../../lib/core/trying/influences.ts'
import { influenceWords, inputName } from '../../../../lib/words/tryText.ts'
import type { FormNames } from '../partWords.ts'

/** The inputs that move one household's share most. */
export function InfluenceList({
  notebook,
  household,
  influences,
  names,
}: {
  notebook: Notebook
  household: Household
  /** Undefined while they are being worked out. */
  influences: readonly Influence[] | undefined
  names: FormNames
}) {
  if (influences === undefined) return <p>Being worked out…</p>
  if (influences.length === 0) return <p>Nothing moves the share of {names[household]} yet.</p>
  return (
    <ol className="influences">
      {influences.map((one) => {
        const name = inputName(notebook, one.input)
        return (
          <li key={name + one.input.field}>
            <strong>{name}</strong>
            <br />
            {influenceWords(one, names.currency)}
          </li>
        )
      })}
    </ol>
  )
}
