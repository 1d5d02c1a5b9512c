import type { Gate, PassageCounts } from '../agreement/notebook.ts'
import { type Ratio, ratio } from '../amounts/ratio.ts'
import { scaledInteger } from '../amounts/typedNumber.ts'
import { type ForBoth, type Household, otherHousehold } from '../people/household.ts'

/** What each household counted of both; only the household that counted is there until both have. */
export type Counted = { readonly a?: ForBoth<string>; readonly b?: ForBoth<string> }

/** What a gate says of its passages: settled, still counted apart, or neither. */
export type PassageState = Pick<Gate, 'uses'> & { readonly passages?: PassageCounts }

/** Passages as a share looks at them. `apart`: they are being counted and not settled, so that each has one half. */
export type SharedUses = ForBoth<string> & { readonly apart?: true }

const none: ForBoth<string> = { a: '', b: '' }

/** The passages that an item is shared by; undefined on anything that is not a gate. */
export function sharedUses(item: object | PassageState | undefined): SharedUses | undefined {
  if (item === undefined || !('uses' in item)) return undefined
  return item.passages === undefined ? item.uses : { ...none, apart: true }
}

/** Whether two counts are the same as numbers: "5" and "5.0" are. */
export function sameCount(one: ForBoth<string>, other: ForBoth<string>): boolean {
  return same(passages(one.a), passages(other.a)) && same(passages(one.b), passages(other.b))
}

/**
 * What the gate says once a household has counted. A settled count stands until both have counted anew. The first count
 * of all opens the counting; two counts that are the same settle it, two that differ stand side by side.
 */
export function afterCount(gate: PassageState, counted: Counted): PassageState {
  const { a, b } = counted
  if (a === undefined || b === undefined)
    return gate.passages !== undefined || isSaid(gate.uses) ? gate : { uses: none, passages: { takes: {} } }
  return sameCount(a, b) ? { uses: a } : { uses: none, passages: { a, b, takes: {} } }
}

/** What the gate says once a household takes a count; undefined where two counts don't stand there. */
export function afterTaking(
  gate: PassageState,
  household: Household,
  count: Household,
): PassageState | undefined {
  const { passages: counts } = gate
  if (counts?.a === undefined || counts.b === undefined) return undefined
  const takes = { ...counts.takes, [household]: count }
  const agreed = takes[household] === takes[otherHousehold(household)]
  return agreed ? { uses: counts[count] ?? none } : { uses: gate.uses, passages: { ...counts, takes } }
}

/** Whether a count stands for this gate. */
export function isSaid(uses: ForBoth<string>): boolean {
  return uses.a !== '' || uses.b !== ''
}

/** What is not said counts as none. */
function passages(typed: string): Ratio {
  return ratio(typed === '' ? 0n : scaledInteger(typed, 6), 1_000_000n)
}

function same(one: Ratio, other: Ratio): boolean {
  return one.over * other.under === other.over * one.under
}
