import { ratio } from '../amounts/ratio.ts'
import type { Household } from '../people/household.ts'
import type { ExactShareOfA } from './context.ts'

/** One household: the whole pot is asked of one household. */
export function oneShare(pot: bigint, payer: { readonly household: Household }): ExactShareOfA {
  return ratio(payer.household === 'a' ? pot : 0n, 1n)
}
