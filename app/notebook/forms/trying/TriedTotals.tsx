'use client'

import type { Result } from '../../../../lib/core/result.ts'
import type { Statement } from '../../../../lib/core/shares/statement.ts'
import { faultText } from '../../../../lib/words/faultText.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { capSentence } from '../../../../lib/words/shareText.ts'
import { changeWords } from '../../../../lib/words/tryText.ts'
import { HouseholdTag } from '../../../ui/HouseholdTag.tsx'
import type { FormNames } from '../partWords.ts'

/** What each household would be asked for, against the plan; always in sight. */
export function TriedTotals({
  planned,
  tried,
  names,
}: {
  planned: Result<Statement>
  tried: Result<Statement>
  names: FormNames
}) {
  if (!tried.ok) {
    return (
      <div className="try-totals" role="status">
        {tried.faults.map((fault) => (
          <p key={`${fault.path} ${fault.kind}`}>{faultText(fault)}</p>
        ))}
      </div>
    )
  }
  const { asked, total, currency } = tried.value
  const before = planned.ok ? planned.value : undefined
  const moved = capSentence(asked, names)
  return (
    <div className="try-totals" role="status">
      <dl>
        {(['a', 'b'] as const).map((household) => (
          <div key={household}>
            <dt>
              <HouseholdTag household={household} name={names[household]} />
            </dt>
            <dd className="figure">
              <strong>{moneyWords(asked[household], currency)}</strong>{' '}
              <span>{before ? changeWords(before.asked[household], asked[household], currency) : ''}</span>
            </dd>
          </div>
        ))}
        <div>
          <dt>Whole fence</dt>
          <dd className="figure">
            <strong>{moneyWords(total, currency)}</strong>{' '}
            <span>{before ? changeWords(before.total, total, currency) : ''}</span>
          </dd>
        </div>
      </dl>
      {moved === undefined ? null : <p>{moved}</p>}
    </div>
  )
}
