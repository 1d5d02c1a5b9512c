import { type ItemStanding, plannedAgainstActual } from '../../../../lib/core/ledger/plannedAgainstActual.ts'
import { digitsOf } from '../../../../lib/core/shares/statement.ts'
import { againstPlanWords, spentBeyondWords } from '../../../../lib/words/againstPlanText.ts'
import { cameToWords, lineWords } from '../../../../lib/words/booksText.ts'
import { itemTitle } from '../../../../lib/words/itemWords.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { beyondToleranceFigures } from '../../../../lib/words/toleranceText.ts'
import { FigureTable } from '../../../ui/FigureTable.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { cameToAnchor, itemAnchor } from '../account/openForAccountPage.ts'
import { beyondItems } from '../beyondAgreed.ts'
import { booksFigures } from '../booksFigures.ts'
import type { Opened } from '../opened.ts'

/** Every line of an item with what was planned, what it came to and what counts, side by side. */
export function CameToTable({ item, currency }: { item: ItemStanding; currency: string }) {
  const title = itemTitle({ kind: item.kind, name: item.name, key: `item:${item.id}` })
  const money = (minor: bigint) => moneyWords(minor, currency)
  return (
    <FigureTable
      caption={`Planned and actual of ${title}`}
      columns={[
        { label: 'Line' },
        { label: 'Planned', figures: true },
        { label: 'Actual', figures: true },
        { label: 'In the balance', figures: true },
      ]}
      rows={item.lines.map(({ line, planned, actual, entries, counts }) => [
        lineWords(line.what),
        money(planned),
        entries.length === 0 ? 'nothing yet' : money(actual),
        money(counts),
      ])}
      foot={[
        ...(item.things === 0n ? [] : [[cameToWords.things, '', '', money(-item.things)]]),
        [cameToWords.all, money(item.planned), money(item.onLines), money(item.counts)],
      ]}
    />
  )
}

/** On the page of an item: planned beside actual once anything was entered or marked, and what is beyond the tolerance. */
export function CameTo({ opened, id }: { opened: Opened; id: string }) {
  const figures = booksFigures(opened)
  const { notebook } = figures
  if (notebook.contributions.length === 0 && notebook.books.bought.length === 0) return null
  const item = plannedAgainstActual(notebook, digitsOf(notebook)).items.find((one) => one.id === id)
  const known = item?.lines.some(({ entries, bought }) => entries.length > 0 || bought)
  if (item === undefined || known !== true) return null
  const spent = spentBeyondWords([item], notebook.currency)
  const beyond = beyondItems(figures).find((one) => one.id === id)
  return (
    <Panel
      heading={cameToWords.heading}
      id={cameToAnchor}
      aside={againstPlanWords([item], notebook.currency)}
    >
      {beyond === undefined ? null : <p>{beyondToleranceFigures(beyond, notebook.currency)}</p>}
      {spent === undefined ? null : <p>{spent}.</p>}
      <CameToTable item={item} currency={notebook.currency} />
      <p>
        <a href={`/notebook/${opened.notebookId}/books#${itemAnchor(id)}`}>{cameToWords.inBooks}</a>
      </p>
    </Panel>
  )
}
