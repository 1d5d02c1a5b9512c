import { plannedHours } from '../../../lib/core/hours/plannedHours.ts'
import type { Statement } from '../../../lib/core/shares/statement.ts'
import { hoursInMoneyWords, meansLabel, plannedHoursWords } from '../../../lib/words/meansText.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { MeansList } from './MeansList.tsx'
import type { Opened } from './opened.ts'

/** Of what is asked of each household, what is money and what its own goods and work; and the planned hours. */
export function PlannedMeans({ opened, statement }: { opened: Opened; statement: Statement }) {
  const { notebook } = opened
  const hours = plannedHoursWords(plannedHours(notebook, statement), shareNames(notebook))
  return (
    <>
      <p className="whole-means-label">{meansLabel}</p>
      <MeansList notebook={notebook} statement={statement} />
      {hours === undefined ? null : (
        <p>
          {hours} {hoursInMoneyWords}
        </p>
      )}
    </>
  )
}
