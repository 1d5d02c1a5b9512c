import { assert } from '../assert.ts'
import { kilogramsPerPound, litresPerCubicFoot } from './unitFactors.ts'

/** A round hole with a post in it; every size in millimetres. */
export type PostHole = {
  readonly diameter: number
  readonly depth: number
  /** Height of the gravel bed on the bottom, through which the post stands. */
  readonly gravel: number
  /** Outside size of the post; a square one by its side, a rectangular one by both. Concrete does not fill its inside. */
  readonly post:
    | { readonly kind: 'round' | 'square'; readonly outside: number }
    | { readonly kind: 'rectangular'; readonly outside: number; readonly thickness: number }
  /** How much more than drawn the ground gives way, in percent of the hole's volume (not of the concrete's). */
  readonly overbreakPercent: number
}

/** Whether the post finds room in the hole and the gravel bed is not higher than the hole is deep. */
export function isPossibleHole(hole: PostHole): boolean {
  const { diameter, depth, gravel, post, overbreakPercent } = hole
  const sizes = [diameter, depth, gravel, ...sidesOf(post), overbreakPercent]
  if (!sizes.every((size) => Number.isFinite(size) && size >= 0)) return false
  return acrossPost(post) <= diameter && gravel <= depth
}

/** The widest a post is: its diameter, or the diagonal of one with four sides. */
export function acrossPost(post: PostHole['post']): number {
  return post.kind === 'round' ? post.outside : Math.hypot(...sidesOf(post))
}

function sidesOf(post: PostHole['post']): readonly [number, number] {
  return [post.outside, post.kind === 'rectangular' ? post.thickness : post.outside]
}

/**
 * What one hole takes, in litres: concrete between the gravel and the ground less the post's own volume, and the whole
 * gravel bed, both with overbreak. Throws on a hole that `isPossibleHole` refuses.
 */
export function holeFill(hole: PostHole): { readonly concreteLitres: number; readonly gravelLitres: number } {
  assert(isPossibleHole(hole), 'a hole that holds its post')
  const { depth, gravel, post } = hole
  const dug = circle(hole.diameter) * (1 + hole.overbreakPercent / 100)
  const [side, other] = sidesOf(post)
  const standing = post.kind === 'round' ? circle(side) : side * other
  return {
    concreteLitres: ((dug - standing) * (depth - gravel)) / cubicMillimetresPerLitre,
    gravelLitres: (dug * gravel) / cubicMillimetresPerLitre,
  }
}

const cubicMillimetresPerLitre = 1e6

function circle(diameter: number): number {
  return (Math.PI * diameter * diameter) / 4
}

/** Packaged dry concrete: what one bag weighs dry and how much it makes. */
export type ConcreteBag = {
  readonly label: string
  readonly dryKilograms: number
  readonly yieldLitres: number
}

function poundBag(pounds: number, cubicFeet: number): ConcreteBag {
  return {
    label: `${pounds} lb`,
    dryKilograms: pounds * kilogramsPerPound,
    yieldLitres: cubicFeet * litresPerCubicFoot,
  }
}

/**
 * The yields that bags of packaged concrete (ASTM C387) state on their labels, the same on several trade pages; all are
 * 133⅓ lb dry per cubic foot. A bag's own label goes before this table.
 */
export const concreteBags: readonly ConcreteBag[] = [
  poundBag(80, 0.6),
  poundBag(60, 0.45),
  poundBag(50, 0.375),
  poundBag(40, 0.3),
]

/**
 * Whole bags for a whole job, not hole by hole: ten holes of 3.77 bags take 38, not 40.
 *
 * @param litres concrete for all holes, zero or more
 * @param yieldLitres what one bag makes, more than zero
 */
export function bagsForJob(litres: number, yieldLitres: number): number {
  assert(litres >= 0 && yieldLitres > 0, 'a volume and a yield')
  // A hair of floating point must not buy a bag: 2.4 ft³ are exactly four bags of 0.6.
  return Math.max(0, Math.ceil((litres / yieldLitres) * (1 - 1e-12)))
}

/** What the bags weigh dry, in kg, to carry and to put on the list. */
export function dryWeight(bags: number, bag: ConcreteBag): number {
  return bags * bag.dryKilograms
}
