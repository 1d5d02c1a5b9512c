import { assert } from '../assert.ts'
import type { ForBoth, Household } from '../people/household.ts'
import type { Ratio } from './ratio.ts'

/** The two parts of a whole, and who was given the odd unit and why, if there was one. */
export type Split = {
  readonly a: bigint
  readonly b: bigint
  readonly odd?: {
    readonly to: Household
    readonly because: 'larger remainder' | 'asked for less so far' | 'first on a full tie'
  }
}

/**
 * Splits a whole number of units exactly in two. Both exact shares are cut down to whole units; the unit left over, if
 * any, goes to the larger remainder; on a tie to the household that has been asked for less so far; if that ties too,
 * to a. Rule 2 of the file format (largest remainder, Hamilton).
 *
 * @param total whole units, zero or more
 * @param exactA a's exact share in units, from 0 to `total`
 * @param askedSoFar what each household was asked for before, in the same units
 */
export function splitExactly(total: bigint, exactA: Ratio, askedSoFar: ForBoth<bigint>): Split {
  assert(exactA.over >= 0n && exactA.over <= total * exactA.under, 'a share between nothing and the whole')
  const a = exactA.over / exactA.under
  const remainderA = exactA.over % exactA.under
  if (remainderA === 0n) return { a, b: total - a }
  // b's exact share is total − exactA: its remainder is what a's lacks to the next whole unit.
  const remainderB = exactA.under - remainderA
  const odd = oddUnit(remainderA, remainderB, askedSoFar)
  return odd.to === 'a' ? { a: a + 1n, b: total - a - 1n, odd } : { a, b: total - a, odd }
}

function oddUnit(
  remainderA: bigint,
  remainderB: bigint,
  askedSoFar: ForBoth<bigint>,
): NonNullable<Split['odd']> {
  if (remainderA !== remainderB)
    return { to: remainderA > remainderB ? 'a' : 'b', because: 'larger remainder' }
  if (askedSoFar.a !== askedSoFar.b) {
    return { to: askedSoFar.a < askedSoFar.b ? 'a' : 'b', because: 'asked for less so far' }
  }
  return { to: 'a', because: 'first on a full tie' }
}
