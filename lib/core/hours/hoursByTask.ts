import type { Contribution, Conversion, LabourLine, Notebook } from '../agreement/notebook.ts'
import { roundHalfUp } from '../amounts/round.ts'
import { type ForBoth, type Household, households } from '../people/household.ts'
import { type ItemPlace, type ItemShares, placesOf } from '../shares/itemShares.ts'
import { ceilingOf } from './ceilings.ts'
import { turnedHours } from './conversions.ts'
import { countedOf, type ExactHours, exactHours, sameTask } from './ownHours.ts'

/** What stands behind a row: counted work of the households, hired work, gifts, or hours that no line speaks of. */
export type RowKind = 'work' | 'hired' | 'gift' | 'no line'

/** A task of an item. All in millionths of an hour. */
export type TaskHours = {
  readonly kind: RowKind
  /** Its words; empty where none were typed. */
  readonly task: string
  readonly planned: ForBoth<ExactHours>
  readonly hired: ExactHours
  /** What of the hours that the item asks of each falls on this task. Hired hours are asked for too, and met in money. */
  readonly asked: ForBoth<ExactHours>
  /** Given, and counted. */
  readonly given: ForBoth<ExactHours>
  /** Given beyond the ceiling: the worker's own. */
  readonly own: ForBoth<ExactHours>
  readonly ceiling: ExactHours | undefined
  readonly stillToGive: ForBoth<ExactHours>
}

export type ItemHours = ItemPlace & {
  readonly id: string
  readonly name: string
  readonly tasks: readonly TaskHours[]
  /** Hours to give in the place of money, less hours that money is given for. */
  readonly turned: ForBoth<ExactHours>
  /** Asked, without hired work and gifts, and with what was turned, less what was given. Below zero: given more. */
  readonly stillToGive: ForBoth<ExactHours>
}

/**
 * The hours of every item that can be shared, by task and household. An item's hours asked of each are those of rule 4
 * of the file format; on its tasks they are laid in the order of its lines, as differences of running totals, so that
 * the tasks add to exactly the item's.
 *
 * @param notebook the agreement that the books are held against, with the contributions as they are now
 * @param items its shares
 */
export function hoursByTask(
  notebook: Notebook,
  items: readonly ItemShares[],
  conversions: readonly Conversion[],
): readonly ItemHours[] {
  const entries = notebook.contributions.filter(
    (entry) => entry.kind === 'hours' && entry.struck === undefined,
  )
  return placesOf(notebook).flatMap(({ item, kind, index, path }) => {
    const shares = items.find((one) => one.path === path)
    if (shares === undefined) return []
    const here = entries.filter((entry) => entry.for === item.id)
    const tasks = tasksOf(item.labour, shares, here)
    const turned = turnedHours(conversions, item.id)
    const still = (household: Household) =>
      tasks.reduce((sum, task) => sum + task.stillToGive[household], turned[household])
    return [
      {
        kind,
        index,
        path,
        id: item.id,
        name: item.name,
        tasks,
        turned,
        stillToGive: { a: still('a'), b: still('b') },
      },
    ]
  })
}

/** Hours that were entered for the whole fence: they are no item's, and no task's. */
export function hoursForNoItem(notebook: Notebook): ForBoth<ExactHours> {
  const entries = notebook.contributions.filter(
    (entry) => entry.kind === 'hours' && entry.struck === undefined && entry.for === '',
  )
  return sumOf(entries, countedOf)
}

/** The row that an entry belongs to: a gift only where the household's own lines for the task are gifts. */
export function rowKindOf(
  labour: readonly LabourLine[],
  { household, task }: Pick<Contribution, 'household' | 'task'>,
): RowKind {
  const lines = labour.filter((line) => sameTask(line.task, task))
  const own = lines.filter((line) => line.by === household)
  const meant = own.length > 0 ? own : lines
  if (lines.length === 0) return 'no line'
  if (meant.every((line) => !line.counts)) return 'gift'
  return lines.some((line) => kindOfLine(line) === 'work') ? 'work' : 'hired'
}

function kindOfLine(line: LabourLine): Exclude<RowKind, 'no line'> {
  if (!line.counts) return 'gift'
  return line.by === 'hired' ? 'hired' : 'work'
}

type Row = { readonly kind: RowKind; readonly task: string; readonly lines: readonly LabourLine[] }

function tasksOf(
  labour: readonly LabourLine[],
  shares: ItemShares,
  entries: readonly Contribution[],
): TaskHours[] {
  const asked = layOn(shares)
  return rowsOf(labour, entries).map((row) => {
    const here = entries.filter((entry) => isOfRow(labour, entry, row))
    const planned = (by: LabourLine['by']) =>
      row.lines.filter((line) => line.by === by).reduce((sum, line) => sum + exactHours(line.hours), 0n)
    const counts = row.kind === 'work' || row.kind === 'hired'
    const hours = row.lines.reduce((sum, line) => sum + exactHours(line.hours), 0n)
    const askedHere = counts ? asked(hours) : { a: 0n, b: 0n }
    const given = sumOf(here, countedOf)
    const still = (household: Household) =>
      row.kind === 'gift' ? 0n : (row.kind === 'work' ? askedHere[household] : 0n) - given[household]
    return {
      kind: row.kind,
      task: row.task,
      planned: { a: planned('a'), b: planned('b') },
      hired: planned('hired'),
      asked: askedHere,
      given,
      own: sumOf(here, (entry) => exactHours(entry.hours) - countedOf(entry)),
      ceiling: counts ? ceilingOf(labour, row.task) : undefined,
      stillToGive: { a: still('a'), b: still('b') },
    }
  })
}

/** Lines of the same words and kind are one row, in the order of the lines; then what was given beside them. */
function rowsOf(labour: readonly LabourLine[], entries: readonly Contribution[]): Row[] {
  const rows = new Map<string, Row>()
  const put = (kind: RowKind, task: string, lines: readonly LabourLine[]) => {
    const key = `${kind} ${task}`
    rows.set(key, { kind, task, lines: [...(rows.get(key)?.lines ?? []), ...lines] })
  }
  for (const line of labour) put(kindOfLine(line), line.task.trim(), [line])
  for (const entry of entries)
    if (rowKindOf(labour, entry) === 'no line') put('no line', entry.task.trim(), [])
  return [...rows.values()]
}

function isOfRow(labour: readonly LabourLine[], entry: Contribution, row: Row): boolean {
  return rowKindOf(labour, entry) === row.kind && entry.task.trim() === row.task
}

/** Lays the item's asked hours on its tasks, one after the other. The item's own are in hundredths. */
function layOn({ hours }: ItemShares): (taskHours: ExactHours) => ForBoth<ExactHours> {
  let [reached, hundredths, laidOnA] = [0n, 0n, 0n]
  return (taskHours) => {
    reached += taskHours
    const upTo = roundHalfUp(reached, 10_000n)
    const upToA = hours.hours === 0n ? 0n : (hours.a * upTo) / hours.hours
    const [inAll, a] = [upTo - hundredths, upToA - laidOnA]
    hundredths = upTo
    laidOnA = upToA
    return { a: a * 10_000n, b: (inAll - a) * 10_000n }
  }
}

function sumOf(
  entries: readonly Contribution[],
  figure: (entry: Contribution) => ExactHours,
): ForBoth<ExactHours> {
  const sums = { a: 0n, b: 0n }
  for (const household of households)
    for (const entry of entries) if (entry.household === household) sums[household] += figure(entry)
  return sums
}
