import type { Notebook } from '../agreement/notebook.ts'
import { type Minor, minorUnits, moneyText } from '../amounts/money.ts'
import { type ForBoth, type Household, households, otherHousehold } from '../people/household.ts'
import { held, type Result, refused } from '../result.ts'

/** What each household is asked for after caps, and what a cap moved, if it did. */
export type Capped = ForBoth<Minor> & {
  readonly moved?: { readonly from: Household; readonly amount: Minor }
}

/**
 * Rule 3 of the file format: what a household's total exceeds its cap by moves to the other. Two caps that together
 * fall short of the total are refused (path `caps`), with the shortfall.
 */
export function applyCaps(before: ForBoth<Minor>, caps: Notebook['caps'], digits: number): Result<Capped> {
  const capA = caps.a === undefined ? undefined : minorUnits(caps.a, digits)
  const capB = caps.b === undefined ? undefined : minorUnits(caps.b, digits)
  const total = before.a + before.b
  if (capA !== undefined && capB !== undefined && capA + capB < total) {
    const money = (minor: Minor) => moneyText(minor, digits)
    const facts = { a: money(capA), b: money(capB), total: money(total), short: money(total - capA - capB) }
    return refused({ path: 'caps', kind: 'caps-short', ...facts })
  }
  if (capA !== undefined && before.a > capA) {
    return held({ a: capA, b: total - capA, moved: { from: 'a', amount: before.a - capA } })
  }
  if (capB !== undefined && before.b > capB) {
    return held({ a: total - capB, b: capB, moved: { from: 'b', amount: before.b - capB } })
  }
  return held({ a: before.a, b: before.b })
}

/** A cap that would move something, were it marked by the household that the excess moves to. */
export type WaitingCap = { readonly household: Household; readonly cap: Minor; readonly amount: Minor }

/**
 * The caps that move anything: a household may say at any time how much it can be asked for, but what lies above moves to
 * the other only with the other's mark on the caps as they stand.
 */
export function capsInForce(caps: Notebook['caps'], marked: ForBoth<boolean>): Notebook['caps'] {
  return {
    ...(caps.a !== undefined && marked.b && { a: caps.a }),
    ...(caps.b !== undefined && marked.a && { b: caps.b }),
  }
}

/** The caps that wait for the other household's mark and would move something, and how much. */
export function waitingCaps(
  before: ForBoth<Minor>,
  caps: Notebook['caps'],
  marked: ForBoth<boolean>,
  digits: number,
): readonly WaitingCap[] {
  return households.flatMap((household) => {
    const typed = caps[household]
    if (typed === undefined || marked[otherHousehold(household)]) return []
    const cap = minorUnits(typed, digits)
    const amount = before[household] - cap
    return amount > 0n ? [{ household, cap, amount }] : []
  })
}
