import type { BookMarks, Notebook } from '../agreement/notebook.ts'
import { type Minor, minorUnits } from '../amounts/money.ts'
import { type Household, households, otherHousehold } from '../people/household.ts'
import { actualsOf, nothingSpent } from './actual.ts'
import { lineFinder, type PlannedLine, plannedLines } from './findLine.ts'
import { type LineMarks, marksByLine, movedSince, waitsForMark } from './lineMarks.ts'
import { canBeMarked } from './things.ts'
import { twoValues } from './valuation.ts'

/** A line that has come to another amount since both marked it. In minor units, as a mark has it. */
export type MovedLine = {
  readonly line: PlannedLine
  /** What both marked: it counts until both mark another. */
  readonly held: Minor
  readonly actual: Minor
  /** Who has marked what it comes to now. */
  readonly markedBy: readonly Household[]
}

/**
 * How many figures in the books the other household has marked and this one has not: lines at what they still come to,
 * things that somebody keeps or that were changed or taken off, and goods above their lower value.
 */
export function waitingMarks(notebook: Notebook, household: Household, digits: number): number {
  const waits = (marks: BookMarks) =>
    marks[otherHousehold(household)] !== undefined && marks[household] === undefined
  const lines = markedLines(notebook, digits).filter(({ marks, actual }) =>
    waitsForMark(marks, actual, household),
  )
  const things = notebook.books.things.filter((thing) => canBeMarked(thing) && waits(thing.marks))
  const goods = notebook.contributions.filter(({ kind, struck, amount, valuation }) => {
    if (kind !== 'material' || struck !== undefined || valuation === undefined || !waits(valuation.marks))
      return false
    const { lower } = twoValues(valuation, digits)
    return lower !== undefined && lower < minorUnits(amount, digits)
  })
  return lines.length + things.length + goods.length
}

/** Every line of which what both marked counts although it has come to something else since, in the order of the file. */
export function movedLines(notebook: Notebook, digits: number): readonly MovedLine[] {
  return markedLines(notebook, digits).flatMap(({ line, marks, actual }) =>
    marks.held === undefined || !movedSince(marks, actual)
      ? []
      : [
          {
            line,
            held: marks.held.amount,
            actual,
            markedBy: households.filter((household) => marks.pending[household]?.amount === actual),
          },
        ],
  )
}

/** The lines that anybody has marked, with what each comes to now. */
function markedLines(
  notebook: Notebook,
  digits: number,
): readonly { readonly line: PlannedLine; readonly marks: LineMarks; readonly actual: Minor }[] {
  if (notebook.books.bought.length === 0) return []
  const find = lineFinder(notebook)
  const marked = marksByLine(notebook, digits, find)
  const { byPath } = actualsOf(notebook, digits, find)
  return plannedLines(notebook).flatMap((line) => {
    const marks = marked.get(line.path)
    const { amount: actual } = byPath.get(line.path) ?? nothingSpent
    return marks === undefined ? [] : [{ line, marks, actual }]
  })
}
