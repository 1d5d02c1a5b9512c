import { type Notebook, type Thing, type ThingState, thingKinds } from '../agreement/notebook.ts'
import { type Minor, minorUnits } from '../amounts/money.ts'
import type { Household } from '../people/household.ts'
import { placesOf } from '../shares/itemShares.ts'
import { markedByBoth } from './valuation.ts'

/** A thing whose value counts: both marked it, somebody has it, and it belongs to an item of the plan. */
export type CountedThing = {
  /** Its place in `books.things`. */
  readonly index: number
  /** As both marked it, which may be other than what stands there now. */
  readonly kind: Thing['kind']
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

/** Where a thing stands between the two households. */
export type ThingStanding =
  /** Not both have marked it yet, or there is nothing to mark. */
  | 'open'
  | 'agreed'
  /** Both marked something else than what stands there now, and that counts until both mark this. */
  | 'changed'
  /** Taken off the list; what both marked counts until both mark that. */
  | 'going'
  /** Off the list: it counts as nothing. */
  | 'gone'

export function standingOfThing({ marks, agreed, off }: Thing): ThingStanding {
  const changed = agreed !== undefined && markedByBoth(agreed.marks) && !markedByBoth(marks)
  if (off !== undefined) return changed ? 'going' : 'gone'
  if (changed) return 'changed'
  return markedByBoth(marks) ? 'agreed' : 'open'
}

/** What of a thing counts: what both marked last. */
export function countingState(thing: Thing): ThingState | undefined {
  switch (standingOfThing(thing)) {
    case 'agreed':
      return thing
    case 'changed':
    case 'going':
      return thing.agreed
    default:
      return undefined
  }
}

/** Whether there is something about a thing that a household can mark: a value that somebody has, or a change. */
export function canBeMarked(thing: Thing): boolean {
  const standing = standingOfThing(thing)
  if (standing === 'changed' || standing === 'going') return true
  const { kind, value, household } = thing
  return standing !== 'gone' && mayHaveValue(kind) && value !== '' && household !== ''
}

/**
 * The things whose value is taken off their item's materials and off what their household has given: it holds that much.
 */
export function countedThings(notebook: Notebook, digits: number): readonly CountedThing[] {
  const marked = notebook.books.things.flatMap((thing, index) => {
    const state = countingState(thing)
    if (state === undefined) return []
    const { kind, household, value, item, what } = state
    if (!mayHaveValue(kind) || household === '' || value === '') return []
    const worth = minorUnits(value, digits)
    return worth === 0n ? [] : [{ index, kind, what, item, household, value: worth }]
  })
  if (marked.length === 0) return []
  const known = new Set(placesOf(notebook).map(({ item }) => item.id))
  return marked.filter(({ item }) => known.has(item))
}
