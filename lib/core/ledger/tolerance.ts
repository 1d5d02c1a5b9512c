import type { Arrangements, Notebook } from '../agreement/notebook.ts'
import type { Minor } from '../amounts/money.ts'
import { scaledInteger } from '../amounts/typedNumber.ts'
import type { ItemPlace } from '../shares/itemShares.ts'
import { plannedAgainstActual } from './plannedAgainstActual.ts'

/** An item that came dearer than both had agreed to take. Money in minor units. */
export type BeyondTolerance = ItemPlace & {
  readonly id: string
  readonly name: string
  readonly planned: Minor
  /** With the actual figures of all lines that both marked, and less what things of it are worth. */
  readonly actual: Minor
  /** As it was agreed: "10". */
  readonly percent: string
  /** The most that the item may come to: the plan and the tolerance on it, less any part of a minor unit. */
  readonly allowed: Minor
}

/**
 * The items whose actual figures lie above the plan by more than the tolerance. Exactly the tolerance is not beyond it.
 * Nothing where none is agreed. Only lines that both marked as bought, or as worked, count as actual.
 *
 * @param agreed what both have agreed on: in what was signed, not in a draft
 */
export function beyondTolerance(
  notebook: Notebook,
  digits: number,
  agreed: Pick<Arrangements, 'tolerance'> | undefined,
): readonly BeyondTolerance[] {
  const percent = agreed?.tolerance ?? ''
  if (percent === '' || notebook.books.bought.length === 0) return []
  return plannedAgainstActual(notebook, digits).items.flatMap(
    ({ kind, index, path, id, name, planned, counts: actual }) => {
      const allowed = mostAllowed(planned, percent)
      return actual > allowed ? [{ kind, index, path, id, name, planned, actual, percent, allowed }] : []
    },
  )
}

/** An item of salvage alone is planned below zero: the tolerance is on the size of the plan. */
function mostAllowed(planned: Minor, percent: string): Minor {
  const size = planned < 0n ? -planned : planned
  return planned + (size * scaledInteger(percent, 4)) / 1_000_000n
}
