import Link from 'next/link'
import { signedCostAmount } from '../../../../lib/core/amounts/lineAmount.ts'
import { placesOf, sumLines } from '../../../../lib/core/shares/itemShares.ts'
import { digitsOf } from '../../../../lib/core/shares/statement.ts'
import { takeOff } from '../../../../lib/core/takeoff/takeOff.ts'
import { itemTitle } from '../../../../lib/words/itemWords.ts'
import { householdName } from '../../../../lib/words/labels.ts'
import { moneyWords, typedMoneyWords } from '../../../../lib/words/money.ts'
import { quantityWords } from '../../../../lib/words/quantityWords.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { FigureTable } from '../../../ui/FigureTable.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { ApartFromTakeOff } from '../../server/ApartFromTakeOff.tsx'
import { followedTakeOff } from '../../server/followedTakeOff.ts'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { TakeOffPanels } from '../../server/TakeOffPanels.tsx'

export const metadata = { title: 'Materials' }

export default async function MaterialsPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { notebook } = opened
  const digits = digitsOf(notebook)
  const found = takeOff(notebook)
  const followed = followedTakeOff(opened, found)
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const from = { bought: 'bought', a: householdName(notebook, 'a'), b: householdName(notebook, 'b') }
  return (
    <NotebookShell
      opened={opened}
      page="materials"
      title="Materials"
      lead="Every cost line, item by item. Open an item to change its lines."
    >
      <div className="button-row">
        <ButtonLink href={`/notebook/${notebookId}/materials.csv`} download>
          Shopping list for a spreadsheet (CSV)
        </ButtonLink>
        {found.cutJobs.length > 0 ? (
          <ButtonLink href={`/notebook/${notebookId}/cut-plan`}>Cut plan</ButtonLink>
        ) : null}
        <ButtonLink href={`/notebook/${notebookId}/pieces`}>Pieces at hand</ButtonLink>
        <ButtonLink href={`/notebook/${notebookId}/build-ups`}>Build-ups of your own</ButtonLink>
      </div>
      <TakeOffPanels notebookId={notebookId} notebook={notebook} found={found} />
      {placesOf(notebook).map(({ item, kind }) => {
        const title = itemTitle({ kind, name: item.name, key: `item:${item.id}` })
        return (
          <Panel
            key={item.id}
            heading={title}
            aside={
              <Link href={`/notebook/${notebookId}/item/${encodeURIComponent(item.id)}`} prefetch={false}>
                Open {title}
              </Link>
            }
          >
            <ApartFromTakeOff notebook={notebook} found={followed} item={item} />
            {item.materials.length === 0 ? (
              <p>No cost line yet.</p>
            ) : (
              <FigureTable
                caption={`Cost lines of ${title}`}
                captionUnseen
                columns={[
                  { label: 'What' },
                  { label: 'Quantity', figures: true },
                  { label: 'Price of one', figures: true },
                  { label: 'Tax', figures: true },
                  { label: 'From' },
                  { label: 'Amount', figures: true, result: true },
                ]}
                rows={item.materials.map((line) => [
                  line.credit ? `${line.what || 'unnamed'} (credit)` : line.what || 'unnamed',
                  quantityWords(line.quantity, line.unit),
                  line.unitPrice === ''
                    ? 'not priced yet'
                    : typedMoneyWords(line.unitPrice, notebook.currency),
                  line.taxPercent === '0' ? '' : `${line.taxPercent} %`,
                  from[line.suppliedBy],
                  money(signedCostAmount(line, digits)),
                ])}
                foot={[['Sum', '', '', '', '', money(sumLines(item, digits).materials)]]}
              />
            )}
          </Panel>
        )
      })}
      {placesOf(notebook).length === 0 ? <p>Lay out sections and gates on The line first.</p> : null}
    </NotebookShell>
  )
}
