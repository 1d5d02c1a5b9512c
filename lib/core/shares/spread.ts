import type { ItemKind, Spread } from '../agreement/notebook.ts'
import type { Minor } from '../amounts/money.ts'
import { half, multiplyRatios, type Ratio, ratio } from '../amounts/ratio.ts'
import { splitExactly } from '../amounts/split.ts'
import { sumRatios } from '../amounts/sumRatios.ts'
import type { ForBoth } from '../people/household.ts'
import { lowestTerms } from '../takeoff/exact.ts'
import type { PotShare } from './potShare.ts'

/** A section or gate that common costs are laid on. */
export type SpreadTarget = {
  readonly id: string
  readonly kind: ItemKind
  readonly index: number
  readonly name: string
  /** Of a section from end to end, of a gate its opening; zero where none is said. Exact millimetres. */
  readonly length: Ratio
  /** That length as it was typed: "0 ft to 40 ft", "4 ft"; empty where none is said. */
  readonly typed: string
  /** Materials and labour. */
  readonly cost: Minor
  /** a's exact fraction of each of its pots; of the one pot of both under `together`. */
  readonly fractionA: { readonly materials: Ratio; readonly labour: Ratio }
}

/** One target's part of what is laid, and what a bears of that part. The parts add to exactly 1. */
export type LaidPart = {
  readonly target: SpreadTarget
  readonly weight: Ratio
  readonly part: Ratio
  readonly fractionA: Ratio
}

/** How one pot of a common cost is laid: what its exact share comes from. Stands where a principle stands on other pots. */
export type Laid = {
  readonly principle: 'laid'
  readonly by: Spread
  readonly parts: readonly LaidPart[]
  /** All weights are zero, so the parts are equal. */
  readonly levelled: boolean
  /** The sum over the parts of part × fraction, exact. */
  readonly fractionA: Ratio
}

type Pot = 'materials' | 'labour'

/** Lays a pot of this kind on the sections and gates, in the parts that a spread gives. */
export type Laying = (by: Spread, pot: Pot) => Laid

/** Worked out once for each spread and kind of pot, however many common costs are laid so. `targets` are not empty. */
export function layingOn(targets: readonly SpreadTarget[]): Laying {
  const known = new Map<string, Laid>()
  return (by, pot) => {
    const key = `${by} ${pot}`
    const laid = known.get(key) ?? lay(targets, by, pot)
    known.set(key, laid)
    return laid
  }
}

function lay(targets: readonly SpreadTarget[], by: Spread, pot: Pot): Laid {
  const weights = targets.map((target) => weightOf(target, by))
  const whole = sumRatios(weights)
  const levelled = whole.over === 0n
  const parts = targets.map((target, at) => {
    const weight = weights[at] ?? one
    const part = levelled
      ? ratio(1n, BigInt(targets.length))
      : ratio(weight.over * whole.under, weight.under * whole.over)
    return { target, weight, part: lowestTerms(part), fractionA: target.fractionA[pot] }
  })
  const fractionA = sumRatios(parts.map((one) => lowestTerms(multiplyRatios(one.part, one.fractionA))))
  return { principle: 'laid', by, parts, levelled, fractionA }
}

/** An empty pot while there is nothing to lay it on, or not yet. */
export const laidOnNothing: Omit<Laid, 'by'> = {
  principle: 'laid',
  parts: [],
  levelled: false,
  fractionA: half,
}

const one = ratio(1n, 1n)

function weightOf(target: SpreadTarget, by: Spread): Ratio {
  return by === 'length' ? target.length : by === 'cost' ? ratio(target.cost, 1n) : one
}

/**
 * One pot of a common cost that is laid on the sections and gates: a's exact share is the pot × the sum over them of
 * part × a's fraction there, rounded once by rule 2 of the file format.
 *
 * @param askedSoFar what each household was asked for before this pot, for the odd unit on a tie
 */
export function laidPot(laid: Laid, total: bigint, askedSoFar: ForBoth<bigint>): PotShare {
  const exactA = ratio(total * laid.fractionA.over, laid.fractionA.under)
  const split = splitExactly(total, exactA, askedSoFar)
  return {
    total,
    a: split.a,
    b: split.b,
    principle: laid,
    parts: [{ part: 'whole', principle: laid, pot: total, exactA, ...split }],
    fractionA: total === 0n ? half : laid.fractionA,
  }
}
