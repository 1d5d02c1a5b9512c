import { lengthOf } from '../amounts/length.ts'
import { addRatios, type Ratio, ratio } from '../amounts/ratio.ts'
import { scaledInteger } from '../amounts/typedNumber.ts'
import type { Fault } from '../faults.ts'
import type { ForBoth } from '../people/household.ts'
import { held, type Result, refused } from '../result.ts'
import type { ExactShareOfA, ShareContext } from './context.ts'
import { equalShare } from './equal.ts'

/**
 * By length, by use, by benefit: a is asked for its weight over the sum of both weights. Weights that add to zero
 * while there is something to share are refused with the path of the share.
 */
export function shareByLength(
  pot: bigint,
  fronts: ForBoth<string>,
  context: ShareContext,
): Result<ExactShareOfA> {
  return byWeight(pot, { a: lengthOf(fronts.a), b: lengthOf(fronts.b) }, 'length', context)
}

/** By use: passages a week through the gate; one half of each while they are counted apart and not settled. */
export function shareByUse(pot: bigint, context: ShareContext): Result<ExactShareOfA> {
  if (context.uses?.apart) return held(equalShare(pot))
  return byWeight(pot, typedWeights(context.uses ?? { a: '', b: '' }), 'use', context)
}

/** By benefit: points that the households gave each other. */
export function shareByBenefit(
  pot: bigint,
  points: ForBoth<string>,
  context: ShareContext,
): Result<ExactShareOfA> {
  return byWeight(pot, typedWeights(points), 'benefit', context)
}

function typedWeights(typed: ForBoth<string>): ForBoth<Ratio> {
  const weight = (text: string) => ratio(text === '' ? 0n : scaledInteger(text, 6), 1_000_000n)
  return { a: weight(typed.a), b: weight(typed.b) }
}

function byWeight(
  pot: bigint,
  weights: ForBoth<Ratio>,
  principle: Extract<Fault, { kind: 'weights-zero' }>['principle'],
  context: ShareContext,
): Result<ExactShareOfA> {
  const sum = addRatios(weights.a, weights.b)
  if (sum.over === 0n) return refused({ path: context.path, kind: 'weights-zero', principle })
  return held(ratio(pot * weights.a.over * sum.under, weights.a.under * sum.over))
}
