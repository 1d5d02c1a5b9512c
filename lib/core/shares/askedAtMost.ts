import type { Notebook } from '../agreement/notebook.ts'
import { type Minor, minorUnits } from '../amounts/money.ts'
import type { Household } from '../people/household.ts'
import type { Statement } from './statement.ts'

/** The most that a household can be asked for, and what that rests on. */
export type AskedAtMost = { readonly amount: Minor; readonly by: 'cap agreed' | 'own cap' | 'plan' }

/**
 * A household's cap where both have marked it, or where the household set or marked it itself; else what the plan asks of
 * it now, after caps: that changes with the plan, which binds nobody before all have signed.
 */
export function askedAtMost(
  { caps }: Notebook,
  statement: Statement,
  household: Household,
  cap: { readonly agreedByBoth: boolean; readonly own: boolean },
): AskedAtMost {
  const typed = caps[household]
  if (typed === undefined || typed === '' || !(cap.agreedByBoth || cap.own))
    return { amount: statement.asked[household], by: 'plan' }
  return { amount: minorUnits(typed, statement.digits), by: cap.agreedByBoth ? 'cap agreed' : 'own cap' }
}
