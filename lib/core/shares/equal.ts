import { ratio } from '../amounts/ratio.ts'
import type { ExactShareOfA } from './context.ts'

/** Halves: each household is asked for half of the pot. */
export function equalShare(pot: bigint): ExactShareOfA {
  return ratio(pot, 2n)
}
