import { plannedHours } from '../../../lib/core/hours/plannedHours.ts'
import { households } from '../../../lib/core/people/household.ts'
import type { Statement } from '../../../lib/core/shares/statement.ts'
import { hoursInMoneyWords, meansLabel, meansWords, plannedHoursWords } from '../../../lib/words/meansText.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { HouseholdTag } from '../../ui/HouseholdTag.tsx'
import type { Opened } from './opened.ts'

/** Of what is asked of each household, what is money and what its own goods and work; and the planned hours. */
export function PlannedMeans({ opened, statement }: { opened: Opened; statement: Statement }) {
  const { notebook } = opened
  const names = shareNames(notebook)
  const { asked, inMoney, promised } = statement
  const hours = plannedHoursWords(plannedHours(notebook, statement), names)
  return (
    <>
      <p className="whole-means-label">{meansLabel}</p>
      <ul className="whole-means">
        {households.map((household) => (
          <li key={household}>
            <HouseholdTag household={household} name={names[household]} short />{' '}
            {meansWords(
              { asked: asked[household], inMoney: inMoney[household], promised: promised[household] },
              notebook.currency,
            )}
          </li>
        ))}
      </ul>
      {hours === undefined ? null : (
        <p>
          {hours} {hoursInMoneyWords}
        </p>
      )}
    </>
  )
}
