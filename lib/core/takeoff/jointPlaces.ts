import { compareLengths, type Millimetres } from '../amounts/length.ts'
import { addRatios, multiplyRatios } from '../amounts/ratio.ts'
import { asNumber, ceilingOf, divideRatios, lowestTerms, times } from './exact.ts'
import type { Bay } from './fenceTops.ts'
import type { MitreCut } from './mitreCuts.ts'
import type { LaidRun, Post } from './postLayout.ts'

/** Where a section's rails are joined otherwise than rail end to post. Posts by their place in the layout. */
export type JointPlaces = {
  readonly slips: readonly SlipPlaces[]
  readonly splices: readonly SplicePlace[]
  readonly mitres: readonly MitreCut[]
}

/** The slip joints of one run. */
export type SlipPlaces = {
  readonly from: Millimetres
  readonly to: Millimetres
  /** The posts that they fall at, in order. */
  readonly posts: readonly number[]
  /** How many more the run asks for than it has posts between its ends. */
  readonly withoutPost: number
}

/** Where pieces are let in within a bay, seen from above. */
export type SplicePlace = {
  readonly at: Millimetres
  /** How many rails are spliced there. */
  readonly rails: number
  /** The posts on both sides. */
  readonly between: readonly [number, number]
}

/**
 * Spread evenly over the run: n joints part it into n + 1 equal lengths, each joint at the post nearest to where two of them
 * meet; never two at one post, never at an end of the run.
 */
export function slipPlaces(run: LaidRun, posts: readonly Post[], joints: number): SlipPlaces {
  const inner = run.posts.slice(1, -1)
  const [start, end] = [asNumber(run.from), asNumber(run.to)]
  const count = Math.min(joints, inner.length)
  const places = inner.map((index) => asNumber(posts[index]?.at ?? run.from))
  const chosen: number[] = []
  let next = 0
  for (let joint = 1; joint <= count; joint += 1) {
    const target = start + ((end - start) * joint) / (count + 1)
    const last = inner.length - (count - joint) - 1
    let best = next
    const off = (place: number) => Math.abs((places[place] ?? 0) - target)
    while (best < last && off(best + 1) < off(best)) best += 1
    chosen.push(inner[best] ?? 0)
    next = best + 1
  }
  return { from: run.from, to: run.to, posts: chosen, withoutPost: joints - count }
}

/**
 * In a bay longer than every length at hand, whole lengths are laid from its left post on and the rest comes last; one
 * splice where each whole length ends.
 */
export function splicePlaces(
  bays: readonly Bay[],
  posts: readonly Post[],
  perBay: number,
  longest: Millimetres,
): readonly SplicePlace[] {
  return bays.flatMap((bay) => [
    ...splicesIn(bay, bay.along, perBay, posts, longest),
    ...(bay.brace ? splicesIn(bay, bay.length, 1, posts, longest) : []),
  ])
}

function splicesIn(
  bay: Bay,
  rail: Millimetres,
  rails: number,
  posts: readonly Post[],
  longest: Millimetres,
): readonly SplicePlace[] {
  const left = posts[bay.left]
  if (rails === 0 || left === undefined || compareLengths(rail, longest) <= 0) return []
  const parts = ceilingOf(divideRatios(rail, longest))
  // Along a slope a length reaches less far, seen from above.
  const flat = divideRatios(bay.length, rail)
  return Array.from({ length: parts - 1 }, (_, index) => ({
    at: lowestTerms(addRatios(left.at, multiplyRatios(times(longest, index + 1), flat))),
    rails,
    between: [bay.left, bay.right] as const,
  }))
}
