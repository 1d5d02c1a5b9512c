import type { ItemHours, TaskHours } from '../../../lib/core/hours/hoursByTask.ts'
import { hoursTotals } from '../../../lib/core/hours/hoursTotals.ts'
import type { ExactHours } from '../../../lib/core/hours/ownHours.ts'
import { hoursFigure, hoursStanding, rowKindWords, turnedRowWords } from '../../../lib/words/hoursText.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { itemTitle } from '../../../lib/words/summary/names.ts'
import { FigureTable } from '../../ui/FigureTable.tsx'
import { HouseholdTag } from '../../ui/HouseholdTag.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { booksHours } from './booksHours.ts'
import type { Opened } from './opened.ts'

/** Hours by household and task: asked, given, own, and still to give; gifts and hired work apart. */
export function HoursPanel({ opened }: { opened: Opened }) {
  const hours = booksHours(opened)
  const names = shareNames(hours.notebook)
  const totals = hoursTotals(hours.items, hours.forNoItem)
  const worked = hours.items.filter(({ tasks }) => tasks.length > 0)
  return (
    <Panel heading="Hours by household and task" id="hours">
      {hoursStanding(hours.signed).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <FigureTable
        caption="Hours of both households"
        columns={[
          { label: 'Household' },
          { label: 'Asked', figures: true },
          { label: 'Of it hired', figures: true },
          { label: 'Given', figures: true },
          { label: 'Turned', figures: true },
          { label: 'Still to give', figures: true },
          { label: 'Own, beyond a ceiling', figures: true },
          { label: 'Gifts given', figures: true },
        ]}
        rows={(['a', 'b'] as const).map((household) => {
          const { asked, hired, given, turned, still, own, gifts } = totals[household]
          return [
            <HouseholdTag key={household} household={household} name={names[household]} />,
            ...[asked, hired, given, turned, still, own, gifts].map(hoursFigure),
          ]
        })}
      />
      {worked.map((item) => (
        <TaskTable key={item.path} item={item} names={names} />
      ))}
    </Panel>
  )
}

function TaskTable({ item, names }: { item: ItemHours; names: { readonly a: string; readonly b: string } }) {
  const both = (label: string) =>
    (['a', 'b'] as const).map((household) => ({ label: `${label}, ${names[household]}`, figures: true }))
  const [first, second] = [item.turned.a, item.turned.b]
  return (
    <FigureTable
      caption={itemTitle(item.kind, item.index, item.name)}
      columns={[{ label: 'Task' }, ...both('Asked'), ...both('Given'), ...both('Still to give')]}
      rows={[
        ...item.tasks.map((task) => [taskCell(task), ...taskFigures(task)]),
        ...(first === 0n && second === 0n
          ? []
          : [[turnedRowWords, '', '', '', '', hoursFigure(first), hoursFigure(second)]]),
      ]}
      foot={[['In all', '', '', '', '', hoursFigure(item.stillToGive.a), hoursFigure(item.stillToGive.b)]]}
    />
  )
}

function taskCell({ kind, task, ceiling, own }: TaskHours) {
  const notes = [
    rowKindWords[kind],
    ceiling === undefined ? '' : `no more than ${hoursFigure(ceiling)} h count`,
    own.a + own.b === 0n ? '' : `${hoursFigure(own.a + own.b)} h beyond it are the workers’ own`,
  ].filter(Boolean)
  return (
    <>
      {task || 'not said'}
      {notes.length === 0 ? null : <span className="quiet"> ({notes.join('; ')})</span>}
    </>
  )
}

function taskFigures({ asked, given, stillToGive }: TaskHours): string[] {
  const pair = ({ a, b }: { a: ExactHours; b: ExactHours }) => [hoursFigure(a), hoursFigure(b)]
  return [...pair(asked), ...pair(given), ...pair(stillToGive)]
}
