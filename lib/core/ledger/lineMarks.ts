import type { BookMarks, BoughtLine, Notebook } from '../agreement/notebook.ts'
import { type Minor, minorUnits } from '../amounts/money.ts'
import { type Household, households, otherHousehold } from '../people/household.ts'
import { type FindLine, lineFinder } from './findLine.ts'
import { markedByBoth } from './valuation.ts'

/** What both households marked last of a line. In minor units, as a mark has it: a credit is above zero. */
export type HeldAmount = { readonly amount: Minor; readonly marks: BookMarks }

/** A mark of one household alone: it waits for the other's and counts as nothing. */
export type PendingMark = { readonly amount: Minor; readonly on: string }

export type LineMarks = {
  /** It counts until both mark another amount, whatever the entries come to by now. */
  readonly held: HeldAmount | undefined
  readonly pending: { readonly [Who in Household]?: PendingMark }
}

export const noLineMarks: LineMarks = { held: undefined, pending: {} }

/**
 * The marks in the books by the path of the line that they are on. Where several stand on one line the last counts. A line
 * that was removed has none.
 */
export function marksByLine(
  notebook: Notebook,
  digits: number,
  find: FindLine = lineFinder(notebook),
): ReadonlyMap<string, LineMarks> {
  const byLine = new Map<string, LineMarks>()
  for (const bought of notebook.books.bought) {
    const path = find(bought)?.path
    if (path !== undefined) byLine.set(path, withBought(byLine.get(path) ?? noLineMarks, bought, digits))
  }
  return byLine
}

function withBought({ held, pending }: LineMarks, { amount: typed, marks }: BoughtLine, digits: number) {
  const amount = minorUnits(typed, digits)
  if (markedByBoth(marks)) return { held: { amount, marks }, pending }
  const alone = households.find((household) => marks[household] !== undefined)
  const on = alone === undefined ? undefined : marks[alone]?.on
  if (alone === undefined || on === undefined) return { held, pending }
  return { held, pending: { ...pending, [alone]: { amount, on } } }
}

/** Whether what both marked is no longer what the line comes to. */
export function movedSince({ held }: LineMarks, actual: Minor): boolean {
  return held !== undefined && held.amount !== actual
}

/** Whether a household can mark a line at what it comes to: nobody marks less than nothing, nor the same twice. */
export function mayMark({ held, pending }: LineMarks, actual: Minor, household: Household): boolean {
  return actual >= 0n && held?.amount !== actual && pending[household]?.amount !== actual
}

/** Whether the other household has marked what the line comes to, and this one has not. */
export function waitsForMark(marks: LineMarks, actual: Minor, household: Household): boolean {
  return mayMark(marks, actual, household) && marks.pending[otherHousehold(household)]?.amount === actual
}
