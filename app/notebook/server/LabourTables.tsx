import Link from 'next/link'
import type { LabourLine } from '../../../lib/core/agreement/notebook.ts'
import { hoursText, sumHours } from '../../../lib/core/amounts/hours.ts'
import { labourAmount } from '../../../lib/core/amounts/lineAmount.ts'
import { placesOf, sumLines } from '../../../lib/core/shares/itemShares.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { departsWords, rateTitle } from '../../../lib/words/arrangementText.ts'
import { labourNotes } from '../../../lib/words/hoursText.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { moneyWords, typedMoneyWords } from '../../../lib/words/money.ts'
import { FigureTable } from '../../ui/FigureTable.tsx'
import { Panel } from '../../ui/Panel.tsx'
import type { Opened } from './opened.ts'

/** Every labour line, item by item; a rate that is not the agreed one says so. */
export function LabourTables({ opened }: { opened: Opened }) {
  const { notebook, notebookId } = opened
  const digits = digitsOf(notebook)
  const money = (minor: bigint) => moneyWords(minor, notebook.currency)
  const by = { hired: 'hired', a: householdName(notebook, 'a'), b: householdName(notebook, 'b') }
  const departs = (line: LabourLine) => {
    const words = departsWords(line, notebook.arrangements, notebook.currency)
    return words === undefined ? [] : [`rate ${words}`]
  }
  return placesOf(notebook).map(({ item, kind }) => {
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
          <p>No line of work yet.</p>
        ) : (
          <FigureTable
            caption={`Work lines of ${title}`}
            captionUnseen
            columns={[
              { label: 'Task' },
              { label: 'By' },
              { label: 'Hours', figures: true },
              { label: rateTitle, figures: true },
              { label: 'Amount', figures: true, result: true },
            ]}
            rows={item.labour.map((line) => [
              [line.task || 'unnamed', ...labourNotes(line), ...departs(line)].join(', '),
              line.counts ? by[line.by] : `${by[line.by]}, a gift`,
              line.hours,
              line.rate === '' ? 'no rate yet' : typedMoneyWords(line.rate, notebook.currency),
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
  })
}
