import { type Notebook, type Thing, thingKinds } from '../agreement/notebook.ts'
import { type Minor, minorUnits } from '../amounts/money.ts'
import type { Household } from '../people/household.ts'
import { placesOf } from '../shares/itemShares.ts'
import { markedByBoth } from './valuation.ts'

/** A thing whose value counts: both marked it, somebody has it, and it belongs to an item of the plan. */
export type CountedThing = {
  /** Its place in `books.things`. */
  readonly index: number
  readonly what: string
  readonly item: string
  readonly household: Household
  /** Minor units, above zero. */
  readonly value: Minor
}

/** Tools, leftovers and salvage can be worth something to one household; what is borrowed or hired goes back. */
export const valuedThingKinds = ['tool', 'leftover', 'salvage'] as const satisfies readonly Thing['kind'][]

export function mayHaveValue(kind: Thing['kind']): boolean {
  return (valuedThingKinds as readonly Thing['kind'][]).includes(kind)
}

/** Kinds that go back to where they came from. */
export const returnedThingKinds = thingKinds.filter((kind) => !mayHaveValue(kind))

/**
 * The things whose value is taken off their item's materials and off what their household has given: it holds that much.
 */
export function countedThings(notebook: Notebook, digits: number): readonly CountedThing[] {
  const marked = notebook.books.things.flatMap((thing, index) => {
    const { kind, household, value, marks, item, what } = thing
    if (!mayHaveValue(kind) || household === '' || value === '' || !markedByBoth(marks)) return []
    const worth = minorUnits(value, digits)
    return worth === 0n ? [] : [{ index, what, item, household, value: worth }]
  })
  if (marked.length === 0) return []
  const known = new Set(placesOf(notebook).map(({ item }) => item.id))
  return marked.filter(({ item }) => known.has(item))
}
