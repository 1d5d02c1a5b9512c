import type { ItemHours, TaskHours } from '../../../lib/core/hours/hoursByTask.ts'
import { hoursTotals } from '../../../lib/core/hours/hoursTotals.ts'
import { plannedHours } from '../../../lib/core/hours/plannedHours.ts'
import { type Household, households } from '../../../lib/core/people/household.ts'
import { hoursBars } from '../../../lib/words/figures/hoursBars.ts'
import {
  beyondLabel,
  hoursFigure,
  hoursStanding,
  hoursWords,
  leftLabel,
  rowKindWords,
  swappedLabel,
  turnedRowWords,
} from '../../../lib/words/hoursText.ts'
import { plannedHoursWords } from '../../../lib/words/meansText.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { itemTitle } from '../../../lib/words/summary/names.ts'
import { FigureTable } from '../../ui/FigureTable.tsx'
import { FoldedPart } from '../../ui/FoldedPart.tsx'
import { HouseholdTag } from '../../ui/HouseholdTag.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { booksHours } from './booksHours.ts'
import { FigureView } from './FigureView.tsx'
import { OtherRates } from './OtherRates.tsx'
import type { Opened } from './opened.ts'

/** Hours by household and task: asked, given, own, and left to work or to bring in money; gifts and hired work apart. */
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
      <p>{plannedHoursWords(plannedHours(hours.notebook, hours.shares), names)}</p>
      <OtherRates notebook={hours.notebook} />
      <FigureView shown={hoursBars(totals, names)} />
      <FigureTable
        caption="Hours of both households"
        columns={[
          { label: 'Household' },
          ...['Asked', 'Given', leftLabel, 'Hired', swappedLabel, beyondLabel, 'Gifts'].map((label) => ({
            label,
            figures: true,
          })),
        ]}
        rows={households.map((household) => {
          const { asked, hired, given, turned, still, own, gifts } = totals[household]
          return [
            <HouseholdTag key={household} household={household} name={names[household]} />,
            ...[asked, given, still, hired, turned, own, gifts].map(hoursFigure),
          ]
        })}
      />
      {worked.length === 0 ? null : (
        <FoldedPart summary="Task by task">
          {worked.map((item) => (
            <TaskTable key={item.path} item={item} names={names} />
          ))}
        </FoldedPart>
      )}
    </Panel>
  )
}

type Names = { readonly a: string; readonly b: string }

/** One row for each household that a task concerns. */
function TaskTable({ item, names }: { item: ItemHours; names: Names }) {
  const tag = (household: Household) => <HouseholdTag household={household} name={names[household]} short />
  const turned = households.filter((household) => item.turned[household] !== 0n)
  return (
    <FigureTable
      caption={itemTitle(item.kind, item.index, item.name)}
      columns={[
        { label: 'Task' },
        { label: 'Household' },
        { label: 'Asked', figures: true },
        { label: 'Given', figures: true },
        { label: leftLabel, figures: true },
      ]}
      rows={[
        ...item.tasks.flatMap((task) =>
          concerned(task).map((household) => [
            taskCell(task),
            tag(household),
            ...[task.asked, task.given, task.stillToGive].map((hours) => hoursFigure(hours[household])),
          ]),
        ),
        ...turned.map((household) => [
          turnedRowWords,
          tag(household),
          '',
          '',
          hoursFigure(item.turned[household]),
        ]),
      ]}
      foot={households.map((household) => [
        'In all',
        tag(household),
        '',
        '',
        hoursFigure(item.stillToGive[household]),
      ])}
    />
  )
}

/** The households that are asked for something on a task, gave something, or planned a gift. */
function concerned({ asked, given, own, planned, kind }: TaskHours): readonly Household[] {
  return households.filter(
    (household) =>
      asked[household] + given[household] + own[household] > 0n ||
      (kind === 'gift' && planned[household] > 0n),
  )
}

function taskCell({ kind, task, ceiling, own, planned }: TaskHours) {
  const notes = [
    kind === 'gift' ? `a gift of ${hoursWords(planned.a + planned.b)}` : rowKindWords[kind],
    ceiling === undefined ? '' : `no more than ${hoursWords(ceiling)} count`,
    own.a + own.b === 0n ? '' : `${hoursWords(own.a + own.b)} beyond it are the workers’ own`,
  ].filter(Boolean)
  return (
    <>
      {task || 'not said'}
      {notes.length === 0 ? null : <span className="quiet"> ({notes.join('; ')})</span>}
    </>
  )
}
