import type { Notebook } from '../agreement/notebook.ts'
import type { Minor } from '../amounts/money.ts'
import { type ForBoth, type Household, households } from '../people/household.ts'
import type { Statement } from '../shares/statement.ts'
import { countedLines } from './actual.ts'
import { contributionAmount } from './contributed.ts'
import { hoursLeft } from './hoursLeft.ts'
import { type ItemStanding, type LineStanding, plannedAgainstActual } from './plannedAgainstActual.ts'

/**
 * What each household is still to bring in money if the rest goes as planned: its balance, less what it is still to give in
 * kind and in hours, with what it is still to take for salvage. Before anything is given it is what the plan asks of it in
 * money; once every line has both marks it is the balance itself. In minor units; below zero money is due to it.
 *
 * Goods and hours on no line were given in the place of something planned: they lower whatever is still to give.
 */
export function stillInMoney(notebook: Notebook, { balance, digits }: Statement): ForBoth<Minor> {
  const { items } = plannedAgainstActual(notebook, digits)
  const still = { a: 0n, b: 0n }
  for (const household of households) {
    const own = ownMaterials(items, household)
    const goods = own.reduce((sum, standing) => sum + leftOf(standing, household), 0n)
    const hours = items.map((item) => hoursLeft(notebook, item, household, digits))
    const left = hours.reduce((sum, one) => sum + one.left, goods)
    const spare = hours.reduce((sum, one) => sum + one.spare, onNoLine(notebook, items, household, digits))
    const credits = own.reduce((sum, standing) => sum + creditLeftOf(standing, household), 0n)
    still[household] = balance[household] - (left > spare ? left - spare : 0n) + credits
  }
  return still
}

/** The lines that a household is planned to supply or, for salvage, to receive, and that not both have marked. */
function ownMaterials(items: readonly ItemStanding[], household: Household): readonly LineStanding[] {
  return items
    .flatMap(({ lines }) => lines)
    .filter(({ line, bought }) => !bought && line.pot === 'materials' && line.line.suppliedBy === household)
}

function leftOf({ planned, by }: LineStanding, household: Household): Minor {
  return planned > by[household] && planned > 0n ? planned - by[household] : 0n
}

/** Of a credit, which is below zero, what the household has not taken yet; above zero. */
function creditLeftOf({ planned, by }: LineStanding, household: Household): Minor {
  return planned < 0n && planned < by[household] ? by[household] - planned : 0n
}

/** Goods in kind that the household gave and that are on no line, and hours on no task for no item of the plan. */
function onNoLine(
  notebook: Notebook,
  items: readonly ItemStanding[],
  household: Household,
  digits: number,
): Minor {
  const known = new Set(items.map(({ id }) => id))
  return notebook.contributions.reduce((sum, entry) => {
    if (entry.household !== household) return sum
    if (entry.kind === 'hours')
      return entry.task === '' && !known.has(entry.for) ? sum + contributionAmount(entry, digits) : sum
    if (entry.kind !== 'material') return sum
    const onLines = countedLines(entry, digits).reduce((total, { amount }) => total + amount, 0n)
    return sum + contributionAmount(entry, digits) - onLines
  }, 0n)
}
