import { dayWords } from '../../../../lib/words/day.ts'
import { booksSpending } from '../../../../lib/words/figures/booksSpending.ts'
import { spendingWords } from '../../../../lib/words/figures/spendingSteps.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { FigureTable } from '../../../ui/FigureTable.tsx'
import { FoldedPart } from '../../../ui/FoldedPart.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import type { BooksFigures } from '../booksFigures.ts'
import { FigureView } from '../FigureView.tsx'
import { today } from '../today.ts'

/** What was spent, day by day, against the plan: a figure and its table; nothing while nothing was spent. */
export function SpendingPanel({ figures: { notebook, statement } }: { figures: BooksFigures }) {
  const shown = booksSpending(notebook, statement, today())
  if (shown === undefined) return null
  const names = shareNames(notebook)
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  return (
    <Panel heading={spendingWords.heading} id="day-by-day">
      <p>{spendingWords.lead}</p>
      <FigureView shown={shown} />
      <FoldedPart summary={spendingWords.folded}>
        <FigureTable
          caption={spendingWords.table}
          columns={[
            { label: spendingWords.day },
            { label: names.a, figures: true },
            { label: names.b, figures: true },
            { label: spendingWords.both, figures: true },
          ]}
          rows={shown.days.map(({ on, spent }) => [
            dayWords(on),
            money(spent.a),
            money(spent.b),
            money(spent.a + spent.b),
          ])}
        />
      </FoldedPart>
    </Panel>
  )
}
