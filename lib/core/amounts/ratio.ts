import { assert } from '../assert.ts'

/** An exact quotient of whole numbers; the denominator is positive. Not reduced: it lives for one computation. */
export type Ratio = { readonly over: bigint; readonly under: bigint }

export function ratio(over: bigint, under: bigint): Ratio {
  assert(under !== 0n, 'a ratio over nothing')
  return under < 0n ? { over: -over, under: -under } : { over, under }
}

export const half: Ratio = { over: 1n, under: 2n }

export function addRatios(left: Ratio, right: Ratio): Ratio {
  return ratio(left.over * right.under + right.over * left.under, left.under * right.under)
}

export function multiplyRatios(left: Ratio, right: Ratio): Ratio {
  return ratio(left.over * right.over, left.under * right.under)
}

/** Negative where left is less, positive where it is more, zero where both are the same. */
export function compareRatios(left: Ratio, right: Ratio): number {
  // Most of a fence is in one unit, and then there is nothing to multiply.
  const difference =
    left.under === right.under ? left.over - right.over : left.over * right.under - right.over * left.under
  return difference < 0n ? -1 : difference > 0n ? 1 : 0
}
