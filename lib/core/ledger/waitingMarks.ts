import type { BookMarks, Notebook } from '../agreement/notebook.ts'
import { minorUnits } from '../amounts/money.ts'
import { type Household, otherHousehold } from '../people/household.ts'
import { actualsOf, nothingSpent } from './actual.ts'
import { lineFinder } from './findLine.ts'
import { mayHaveValue } from './things.ts'
import { twoValues } from './valuation.ts'

/**
 * How many figures in the books the other household has marked and this one has not: lines at what they still come to,
 * things that somebody keeps, and goods above their lower value.
 */
export function waitingMarks(notebook: Notebook, household: Household, digits: number): number {
  const waits = (marks: BookMarks) =>
    marks[otherHousehold(household)] !== undefined && marks[household] === undefined
  const bought = notebook.books.bought.filter(({ marks }) => waits(marks))
  const things = notebook.books.things.filter(
    (thing) => mayHaveValue(thing.kind) && thing.value !== '' && waits(thing.marks),
  )
  const goods = notebook.contributions.filter(({ kind, struck, amount, valuation }) => {
    if (kind !== 'material' || struck !== undefined || valuation === undefined || !waits(valuation.marks))
      return false
    const { lower } = twoValues(valuation, digits)
    return lower !== undefined && lower < minorUnits(amount, digits)
  })
  return linesThatStand(notebook, bought, digits) + things.length + goods.length
}

function linesThatStand(notebook: Notebook, bought: Notebook['books']['bought'], digits: number): number {
  if (bought.length === 0) return 0
  const find = lineFinder(notebook)
  const { byPath } = actualsOf(notebook, digits, find)
  return bought.filter((one) => {
    const line = find(one)
    return line && (byPath.get(line.path) ?? nothingSpent).amount === minorUnits(one.amount, digits)
  }).length
}
