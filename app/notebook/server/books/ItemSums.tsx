import type { PlannedAgainstActual } from '../../../../lib/core/ledger/plannedAgainstActual.ts'
import { againstPlanWords, spentBeyondWords } from '../../../../lib/words/againstPlanText.ts'
import { heldAgainstWords } from '../../../../lib/words/booksText.ts'
import { itemTitle } from '../../../../lib/words/itemWords.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { FigureTable } from '../../../ui/FigureTable.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import type { BooksFigures } from '../booksFigures.ts'

/** Planned and actual by item, and what each comes to in the balance. */
export function ItemSums({
  figures: { notebook, signed },
  standing,
  csv,
}: {
  figures: BooksFigures
  standing: PlannedAgainstActual
  csv: string
}) {
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const { items, onNothing } = standing
  const against = (of: typeof items) =>
    [againstPlanWords(of, notebook.currency), spentBeyondWords(of, notebook.currency)]
      .filter(Boolean)
      .join('; ')
  const sum = (key: 'planned' | 'onLines' | 'onNoLine' | 'things' | 'counts') =>
    items.reduce((total, item) => total + item[key], 0n)
  return (
    <Panel
      heading="Planned against actual"
      aside={
        <a href={csv} download>
          As a table for a spreadsheet (CSV)
        </a>
      }
    >
      <p>{heldAgainstWords(signed)}</p>
      <FigureTable
        caption="Planned against actual, by item"
        columns={[
          { label: 'Item' },
          { label: 'Planned', figures: true },
          { label: 'Spent on its lines', figures: true },
          { label: 'Spent on no line', figures: true },
          { label: 'Kept or sold', figures: true },
          { label: 'In the balance', figures: true },
          { label: 'Against the plan', figures: true },
        ]}
        rows={items.map((item) => [
          itemTitle({ kind: item.kind, name: item.name, key: `item:${item.id}` }),
          money(item.planned),
          money(item.onLines),
          money(item.onNoLine),
          money(-item.things),
          money(item.counts),
          against([item]),
        ])}
        foot={[
          [
            'All items',
            money(sum('planned')),
            money(sum('onLines')),
            money(sum('onNoLine')),
            money(-sum('things')),
            money(sum('counts')),
            against(items),
          ],
        ]}
      />
      {onNothing === 0n ? null : <p>{money(onNothing)} was given for the whole fence and is on no line.</p>}
    </Panel>
  )
}
