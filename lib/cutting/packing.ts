import type { Nanometres } from './cutRequest.ts'
import type { CuttingProblem } from './cuttingProblem.ts'

/** How often each item comes out of one length; places in the problem's `items`, longest first, no zeros. */
export type Takes = readonly { readonly item: number; readonly count: number }[]

/** One way to cut a length of one kind. */
export type Pattern = { readonly bin: number; readonly takes: Takes }

/** Which patterns are cut how many times. No piece more than is needed, no length more than there is. */
export type Packing = readonly (Pattern & { readonly times: number })[]

/** What a length still holds after these pieces, in sizes (with kerf): zero where it is used up without a last cut. */
export function spareOf(problem: CuttingProblem, { bin, takes }: Pattern): Nanometres {
  let spare = problem.bins[bin]?.capacity ?? 0
  for (const { item, count } of takes) spare -= count * (problem.items[item]?.size ?? 0)
  return spare
}

/** Saw cuts on one length: one for each piece, and none after the last where it ends with the length. */
export function cutsOf(problem: CuttingProblem, pattern: Pattern): number {
  const pieces = pattern.takes.reduce((sum, { count }) => sum + count, 0)
  return spareOf(problem, pattern) === 0 ? pieces - 1 : pieces
}

/** How many of each item no length gives. */
export function unplacedCounts(problem: CuttingProblem, packing: Packing): number[] {
  const left = problem.items.map(({ demand }) => demand)
  for (const { takes, times } of packing) {
    for (const { item, count } of takes) left[item] = (left[item] ?? 0) - count * times
  }
  return left
}

/** What plans are compared by, in this order; the less the better. */
export type Standing = {
  readonly unplacedLength: Nanometres
  readonly boughtLength: Nanometres
  readonly cuts: number
  readonly lengths: number
  readonly usedLength: Nanometres
}

export function standingOf(problem: CuttingProblem, packing: Packing): Standing {
  let [boughtLength, cuts, lengths, usedLength] = [0, 0, 0, 0]
  for (const pattern of packing) {
    const bin = problem.bins[pattern.bin]
    const length = (bin?.length ?? 0) * pattern.times
    usedLength += length
    if (bin?.bought) boughtLength += length
    cuts += cutsOf(problem, pattern) * pattern.times
    lengths += pattern.times
  }
  const unplacedLength = unplacedCounts(problem, packing).reduce(
    (sum, count, item) => sum + count * (problem.items[item]?.length ?? 0),
    0,
  )
  return { unplacedLength, boughtLength, cuts, lengths, usedLength }
}

/** Negative where left is the better plan. */
export function compareStandings(left: Standing, right: Standing): number {
  return (
    left.unplacedLength - right.unplacedLength ||
    left.boughtLength - right.boughtLength ||
    left.cuts - right.cuts ||
    left.lengths - right.lengths ||
    left.usedLength - right.usedLength
  )
}

/** The better of two plans, the first where they are alike. */
export function betterPacking(problem: CuttingProblem, first: Packing, second: Packing): Packing {
  return compareStandings(standingOf(problem, second), standingOf(problem, first)) < 0 ? second : first
}
