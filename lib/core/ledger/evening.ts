import { lesser, type Minor } from '../amounts/money.ts'
import type { ForBoth, Household } from '../people/household.ts'

/** The one payment between the households that evens the two. */
export type Evening = { readonly from: Household; readonly to: Household; readonly amount: Minor }

/**
 * The smaller of what one household has over-given and what the other still has to give; undefined where either is
 * zero. `balance` is asked less contributed: positive is still to give.
 */
export function eveningPayment(balance: ForBoth<Minor>): Evening | undefined {
  if (balance.a > 0n && balance.b < 0n) return { from: 'a', to: 'b', amount: lesser(balance.a, -balance.b) }
  if (balance.b > 0n && balance.a < 0n) return { from: 'b', to: 'a', amount: lesser(balance.b, -balance.a) }
  return undefined
}
