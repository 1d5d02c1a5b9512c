import type { Conversion } from '../agreement/notebook.ts'
import { labourAmount } from '../amounts/lineAmount.ts'
import type { Minor } from '../amounts/money.ts'
import { type ForBoth, type Household, households, otherHousehold } from '../people/household.ts'
import { type ExactHours, exactHours } from './ownHours.ts'

/** It counts once both have marked it. */
export function countsAlready({ marks }: Pick<Conversion, 'marks'>): boolean {
  return marks.a !== undefined && marks.b !== undefined
}

/** The household whose mark a conversion waits for; undefined once it counts. */
export function waitsFor(conversion: Pick<Conversion, 'marks' | 'household'>): Household | undefined {
  if (countsAlready(conversion)) return undefined
  const other = otherHousehold(conversion.household)
  return conversion.marks[other] === undefined ? other : conversion.household
}

/** What a conversion is worth: its hours at its own rate, rounded once. */
export function conversionAmount(conversion: Pick<Conversion, 'hours' | 'rate'>, digits: number): Minor {
  return labourAmount(conversion, digits)
}

/**
 * By how many hours a household is to give more (or, below zero, less) on an item than it was asked for: hours that it
 * gives in the place of money, less hours that it gives money for. Only what both have marked.
 */
export function turnedHours(conversions: readonly Conversion[], itemId: string): ForBoth<ExactHours> {
  const turned = { a: 0n, b: 0n }
  for (const one of conversions.filter((each) => each.item === itemId && countsAlready(each)))
    turned[one.household] += one.to === 'hours' ? exactHours(one.hours) : -exactHours(one.hours)
  return turned
}

/** The same in money, over all items: what each household brings more (or less) in money. What it is asked for stays. */
export function turnedMoney(conversions: readonly Conversion[], digits: number): ForBoth<Minor> {
  const turned = { a: 0n, b: 0n }
  for (const one of conversions.filter(countsAlready))
    turned[one.household] +=
      one.to === 'money' ? conversionAmount(one, digits) : -conversionAmount(one, digits)
  return turned
}

/** Hours of an item that wait to be turned into money: they can't be turned twice. */
export function waitingHours(conversions: readonly Conversion[], itemId: string): ForBoth<ExactHours> {
  const waiting = { a: 0n, b: 0n }
  for (const one of conversions)
    if (one.to === 'money' && one.item === itemId && !countsAlready(one))
      waiting[one.household] += exactHours(one.hours)
  return waiting
}

/** Money that waits to be turned into hours, over all items. */
export function waitingMoney(conversions: readonly Conversion[], digits: number): ForBoth<Minor> {
  const waiting = { a: 0n, b: 0n }
  for (const household of households)
    for (const one of conversions)
      if (one.to === 'hours' && one.household === household && !countsAlready(one))
        waiting[household] += conversionAmount(one, digits)
  return waiting
}
