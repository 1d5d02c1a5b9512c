import type { Notebook } from '../agreement/notebook.ts'
import { labourAmount, signedCostAmount } from '../amounts/lineAmount.ts'
import type { Minor } from '../amounts/money.ts'
import type { ForBoth } from '../people/household.ts'
import { type ItemPlace, placesOf } from '../shares/itemShares.ts'
import { type Actual, type Actuals, actualsOf, countedLines, nothingSpent } from './actual.ts'
import { contributionAmount } from './contributed.ts'
import { type FindLine, lineFinder, type PlannedLine, plannedLines } from './findLine.ts'
import { type LineMarks, marksByLine, movedSince, noLineMarks } from './lineMarks.ts'
import { countedThings } from './things.ts'

/** One line of the plan against the books. Amounts in minor units, as they enter the pot: a credit is below zero. */
export type LineStanding = {
  readonly line: PlannedLine
  readonly planned: Minor
  readonly actual: Minor
  /** Actual of each household. */
  readonly by: ForBoth<Minor>
  /** Places in the book of the entries that were for it. */
  readonly entries: readonly number[]
  /** Its own amount, as a mark has it: a credit is above zero. Below zero nobody can mark it. */
  readonly markable: Minor
  /** What both marked last, and what waits for a second mark; amounts like `markable`. */
  readonly marks: LineMarks
  /** Both marked an amount: it has the planned one's place. */
  readonly bought: boolean
  /** Both marked an amount, and the line has come to another since. */
  readonly moved: boolean
  /** What counts: what both marked last, else the planned amount. */
  readonly counts: Minor
}

export type ItemStanding = ItemPlace & {
  readonly id: string
  readonly name: string
  readonly lines: readonly LineStanding[]
  readonly planned: Minor
  /** What was spent on its lines. */
  readonly onLines: Minor
  /** What was given for the item and for no line of it. */
  readonly onNoLine: Minor
  /** Value of things that are kept or were sold, taken off its materials; zero or more. */
  readonly things: Minor
  /** What it comes to in the statement. */
  readonly counts: Minor
}

/** How far the books have come with an item: nothing is entered, entered but marked by both nowhere, or marked. */
export function booksOfItem(
  item: Pick<ItemStanding, 'lines' | 'onNoLine' | 'things'>,
): 'nothing' | 'entered' | 'marked' {
  if (item.things !== 0n || item.lines.some(({ bought }) => bought)) return 'marked'
  return item.onNoLine !== 0n || item.lines.some(({ entries }) => entries.length > 0) ? 'entered' : 'nothing'
}

/** The whole plan against the books. */
export type PlannedAgainstActual = {
  readonly items: readonly ItemStanding[]
  readonly actuals: Actuals
  /** Given for the whole fence and for no line; transfers between the households are no cost. */
  readonly onNothing: Minor
}

export function plannedAgainstActual(notebook: Notebook, digits: number): PlannedAgainstActual {
  const find = lineFinder(notebook)
  const actuals = actualsOf(notebook, digits, find)
  const marks = marksByLine(notebook, digits, find)
  const things = countedThings(notebook, digits)
  const lines = plannedLines(notebook).filter(({ pot, line }) => pot === 'materials' || line.counts)
  const byItem = new Map<string, LineStanding[]>()
  for (const line of lines) {
    const standing = standingOf(
      line,
      actuals.byPath.get(line.path) ?? nothingSpent,
      marks.get(line.path) ?? noLineMarks,
      digits,
    )
    const own = byItem.get(line.item.path)
    if (own === undefined) byItem.set(line.item.path, [standing])
    else own.push(standing)
  }
  const onTask = new Set([...byItem.values()].flatMap((own) => own.flatMap(({ entries }) => entries)))
  const rest = restByItem(notebook, onTask, find, digits)
  return {
    items: placesOf(notebook).map(({ item, kind, index, path }) => {
      const own = byItem.get(path) ?? []
      const kept = sumOf(things.filter((thing) => thing.item === item.id).map(({ value }) => value))
      return {
        kind,
        index,
        path,
        id: item.id,
        name: item.name,
        lines: own,
        planned: sumOf(own.map(({ planned }) => planned)),
        onLines: sumOf(own.map(({ actual }) => actual)),
        onNoLine: rest.get(item.id) ?? 0n,
        things: kept,
        counts: sumOf(own.map(({ counts }) => counts)) - kept,
      }
    }),
    actuals,
    onNothing: rest.get('') ?? 0n,
  }
}

function standingOf(line: PlannedLine, actual: Actual, marks: LineMarks, digits: number): LineStanding {
  const sign = line.pot === 'materials' && line.line.credit ? -1n : 1n
  const planned =
    line.pot === 'materials' ? signedCostAmount(line.line, digits) : labourAmount(line.line, digits)
  const { held } = marks
  return {
    line,
    planned,
    actual: sign * actual.amount,
    by: { a: sign * actual.by.a, b: sign * actual.by.b },
    entries: actual.entries,
    markable: actual.amount,
    marks,
    bought: held !== undefined,
    moved: movedSince(marks, actual.amount),
    counts: held === undefined ? planned : sign * held.amount,
  }
}

/**
 * What of the entries was for no line that costs anything, by the item that they are for; '' is the whole fence. A gift
 * of labour costs nobody anything: what was paid on one is the item's.
 *
 * @param onTask places in the book of the entries that are on a line already
 */
function restByItem(
  notebook: Notebook,
  onTask: ReadonlySet<number>,
  find: FindLine,
  digits: number,
): ReadonlyMap<string, Minor> {
  const rest = new Map<string, Minor>()
  const add = (item: string, amount: Minor) => rest.set(item, (rest.get(item) ?? 0n) + amount)
  notebook.contributions.forEach((entry, index) => {
    if (entry.kind === 'transfer' || entry.struck !== undefined) return
    if (entry.kind === 'hours' && onTask.has(index)) return
    const sign = entry.kind === 'refund' ? -1n : 1n
    const lines = countedLines(entry, digits)
    for (const { spent, amount } of lines) {
      const line = find(spent)
      if (line?.pot === 'labour' && !line.line.counts) add(line.itemId, sign * amount)
    }
    const onLines = sumOf(lines.map(({ amount }) => amount))
    add(entry.for, sign * (contributionAmount(entry, digits) - onLines))
  })
  return rest
}

function sumOf(amounts: readonly Minor[]): Minor {
  return amounts.reduce((sum, amount) => sum + amount, 0n)
}
