import type { Contribution, Notebook } from '../agreement/notebook.ts'
import { lesser, type Minor } from '../amounts/money.ts'
import { turnedMoney } from '../hours/conversions.ts'
import type { Household } from '../people/household.ts'
import { contributionAmount } from './contributed.ts'
import type { ItemStanding, LineStanding } from './plannedAgainstActual.ts'

/** Of one item and one household, in minor units, zero or more. */
export type HoursLeft = {
  /** What it is still to give in hours. */
  readonly left: Minor
  /** What it gave on no task beyond that. */
  readonly spare: Minor
}

/**
 * What a household is still to give on an item in hours, as the hours are priced: what it planned to work and has not, less
 * what is given in money instead, with the hours that it gives in the place of money.
 *
 * Hours given in money are taken from lines that both marked at less than was planned before any that are open: there they
 * are told already. Hours in the place of money may be worked on any task: all its hours here that cover nothing it planned
 * are such. Once every line of the item has both marks its hours are what they are, and none is to come.
 */
export function hoursLeft(
  notebook: Notebook,
  item: ItemStanding,
  household: Household,
  digits: number,
): HoursLeft {
  const own = item.lines.filter(({ line }) => line.pot === 'labour' && line.line.by === household)
  const turned = turnedMoney(
    notebook.books.conversions.filter((one) => one.item === item.id),
    digits,
  )[household]
  const here = notebook.contributions.filter(
    (entry) => entry.household === household && entry.kind === 'hours' && entry.for === item.id,
  )
  const worth = (entries: readonly Contribution[]) => sumOf(entries, (one) => contributionAmount(one, digits))

  const open = sumOf(own, (standing) => (standing.bought ? 0n : notGiven(standing, household)))
  const toldByMarks = sumOf(own, (standing) => (standing.bought ? notGiven(standing, household) : 0n))
  const planned = atLeastZero(open - atLeastZero(turned - toldByMarks))

  const onTasks = worth(here.filter(({ task }) => task !== ''))
  const covering = sumOf(own, (standing) => {
    const hours = worth(here.filter((entry) => isOn(notebook, standing, entry)))
    return hours - lesser(hours, beyondPlan(standing, household))
  })
  const inPlaceOfMoney = atLeastZero(-turned - (onTasks - covering))

  const onNoTask = worth(here.filter(({ task }) => task === ''))
  const missing = planned + inPlaceOfMoney
  const left = item.lines.every(({ bought }) => bought) ? 0n : atLeastZero(missing - onNoTask)
  return { left, spare: atLeastZero(onNoTask - missing) }
}

function isOn(notebook: Notebook, { entries }: LineStanding, entry: Contribution): boolean {
  return entries.some((place) => notebook.contributions[place] === entry)
}

function notGiven({ planned, by }: LineStanding, household: Household): Minor {
  return atLeastZero(planned - by[household])
}

/** What it gave on its own line above what was planned, or above the less that both marked. */
function beyondPlan({ planned, counts, by }: LineStanding, household: Household): Minor {
  return atLeastZero(by[household] - lesser(planned, counts))
}

function sumOf<One>(all: readonly One[], amount: (one: One) => Minor): Minor {
  return all.reduce((sum, one) => sum + amount(one), 0n)
}

function atLeastZero(amount: Minor): Minor {
  return amount > 0n ? amount : 0n
}
