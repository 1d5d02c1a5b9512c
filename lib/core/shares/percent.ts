import { ratio } from '../amounts/ratio.ts'
import { scaledInteger } from '../amounts/typedNumber.ts'
import type { ExactShareOfA } from './context.ts'

/** Agreed parts: a is asked for its percentage of the pot. The pair adds to exactly 100, which the file check holds. */
export function percentShare(pot: bigint, percent: { readonly a: string }): ExactShareOfA {
  return ratio(pot * scaledInteger(percent.a, 4), 1_000_000n)
}

/** The sum of two percentages in ten-thousandths of a percent; 1000000n is exactly 100. */
export function percentSum(percent: { readonly a: string; readonly b: string }): bigint {
  return scaledInteger(percent.a, 4) + scaledInteger(percent.b, 4)
}

/** Whether a checked number is a percentage from 0 to 100. */
export function percentInRange(percent: string): boolean {
  return scaledInteger(percent, 4) <= 1_000_000n
}
