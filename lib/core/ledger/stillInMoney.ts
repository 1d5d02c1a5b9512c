import type { Notebook } from '../agreement/notebook.ts'
import type { Minor } from '../amounts/money.ts'
import { turnedMoney } from '../hours/conversions.ts'
import { type ForBoth, type Household, households } from '../people/household.ts'
import type { Statement } from '../shares/statement.ts'
import { countedLines } from './actual.ts'
import { contributionAmount } from './contributed.ts'
import { type LineStanding, plannedAgainstActual } from './plannedAgainstActual.ts'

/**
 * What each household is still to bring in money if the rest goes as planned: its balance, less what it is still to give in
 * kind and in hours, with what it is still to take for salvage. Before anything is given it is what the plan asks of it in
 * money; once every line has both marks it is the balance itself. In minor units; below zero money is due to it.
 */
export function stillInMoney(notebook: Notebook, { balance, digits }: Statement): ForBoth<Minor> {
  const lines = plannedAgainstActual(notebook, digits).items.flatMap((item) => item.lines)
  const turned = turnedMoney(notebook.books.conversions, digits)
  const still = { a: 0n, b: 0n }
  for (const household of households) {
    const own = lines.filter((standing) => !standing.bought && bringsIt(standing, household))
    const left = own.reduce((sum, standing) => sum + leftOf(standing, household), 0n)
    const inKind = left - onNoLine(notebook, household, digits) - turned[household]
    const credits = own.reduce((sum, standing) => sum + creditLeftOf(standing, household), 0n)
    still[household] = balance[household] - (inKind > 0n ? inKind : 0n) + credits
  }
  return still
}

/** Whether a line is planned to be supplied, worked or, for salvage, received by the household. */
function bringsIt({ line }: LineStanding, household: Household): boolean {
  return (line.pot === 'materials' ? line.line.suppliedBy : line.line.by) === household
}

function leftOf({ planned, by }: LineStanding, household: Household): Minor {
  return planned > by[household] && planned > 0n ? planned - by[household] : 0n
}

/** Of a credit, which is below zero, what the household has not taken yet; above zero. */
function creditLeftOf({ planned, by }: LineStanding, household: Household): Minor {
  return planned < 0n && planned < by[household] ? by[household] - planned : 0n
}

/** Goods in kind and hours that the household gave and that are on no line: it gave them in the place of something planned. */
function onNoLine(notebook: Notebook, household: Household, digits: number): Minor {
  return notebook.contributions.reduce((sum, entry) => {
    if (entry.household !== household) return sum
    if (entry.kind === 'hours') return entry.task === '' ? sum + contributionAmount(entry, digits) : sum
    if (entry.kind !== 'material') return sum
    const onLines = countedLines(entry, digits).reduce((total, { amount }) => total + amount, 0n)
    return sum + contributionAmount(entry, digits) - onLines
  }, 0n)
}
