import Link from 'next/link'
import { hoursText, sumHours } from '../../../../lib/core/amounts/hours.ts'
import { labourAmount } from '../../../../lib/core/amounts/lineAmount.ts'
import { placesOf, sumLines } from '../../../../lib/core/shares/itemShares.ts'
import { digitsOf } from '../../../../lib/core/shares/statement.ts'
import { itemTitle } from '../../../../lib/words/itemWords.ts'
import { householdName } from '../../../../lib/words/labels.ts'
import { moneyWords } from '../../../../lib/words/money.ts'
import { Caution } from '../../../ui/Caution.tsx'
import { FigureTable } from '../../../ui/FigureTable.tsx'
import { Page } from '../../../ui/Page.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'

export const metadata = { title: 'Work' }

export default async function WorkPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { notebook } = opened
  const digits = digitsOf(notebook)
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const by = { hired: 'hired', a: householdName(notebook, 'a'), b: householdName(notebook, 'b') }
  return (
    <NotebookShell opened={opened} page="work">
      <Page title="Work" lead="Every labour line in hours, item by item. Open an item to change its lines.">
        <Caution title="Before anyone works">
          <p>
            Have buried services marked before digging. Welding, cutting, lifting and concrete have safety
            rules of their own. Reclaimed oilfield or process tube can hold explosive residue, radioactive
            scale, lead paint or zinc that fumes; a closed tube must be vented before it is heated.
          </p>
        </Caution>
        {placesOf(notebook).map(({ item, kind }) => {
          const title = itemTitle({ kind, name: item.name, key: `item:${item.id}` })
          const counted = item.labour.filter((line) => line.counts)
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
              {item.labour.length === 0 ? (
                <p>No labour line yet.</p>
              ) : (
                <FigureTable
                  caption={`Labour lines of ${title}`}
                  columns={[
                    { label: 'Task' },
                    { label: 'By' },
                    { label: 'Hours', figures: true },
                    { label: 'Rate', figures: true },
                    { label: 'Amount', figures: true },
                  ]}
                  rows={item.labour.map((line) => [
                    line.task || 'unnamed',
                    line.counts ? by[line.by] : `${by[line.by]}, a gift`,
                    line.hours,
                    line.rate === '' ? 'no rate yet' : line.rate,
                    line.counts ? money(labourAmount(line, digits)) : 'in no sum',
                  ])}
                  foot={[
                    [
                      'Sum',
                      '',
                      hoursText(sumHours(counted.map((line) => line.hours))),
                      '',
                      money(sumLines(item, digits).labour),
                    ],
                  ]}
                />
              )}
            </Panel>
          )
        })}
        {placesOf(notebook).length === 0 ? <p>Lay out sections and gates on The line first.</p> : null}
      </Page>
    </NotebookShell>
  )
}
