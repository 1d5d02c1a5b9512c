import { compareLengths, type Millimetres } from '../amounts/length.ts'
import { asNumber, fromMillimetres, larger, lowestTerms, nothing, smaller, subtractRatios } from './exact.ts'
import type { PostLayout } from './postLayout.ts'
import type { PostSize } from './postSize.ts'
import type { BuiltPost, SectionParts } from './sectionParts.ts'

/** What the look at wind takes for the whole section: the bay and the post that have the most to bear. */
export type TypicalBay = {
  /** Horizontal, of the widest bay, from post centre to post centre. */
  readonly bay: Millimetres
  /** Horizontal length of the run that it is part of. */
  readonly run: Millimetres
  /** The highest top over the ground under the fence, anywhere in the section; undefined while no height is agreed. */
  readonly height: Millimetres | undefined
}

/** The posts of a section that are looked at, at their least favourable. */
export type LookedAtPosts = {
  /** Of the widest post; undefined where its size is not said. */
  readonly outside: Millimetres | undefined
  /** What bears on the soil: the narrowest hole where it is filled with concrete, else the post itself. */
  readonly bearing: { readonly of: 'concrete' | 'post'; readonly width: Millimetres } | undefined
  /** Of the shallowest hole, with where its depth is typed; undefined where one is not said. */
  readonly hole: Hole | undefined
}

export type Hole = { readonly depth: Millimetres; readonly path: string }

/** Undefined where the section has no bay. */
export function typicalBay(
  { bays }: SectionParts,
  { runs }: PostLayout,
  posts: readonly BuiltPost[],
): TypicalBay | undefined {
  const [first] = bays
  if (first === undefined) return undefined
  let [widest, run] = [first.length, first.run]
  let highest = nothing
  let before: Millimetres | undefined
  const rise = (post: number, top: Millimetres) => {
    const ground = posts[post]?.piece.ground.fence
    if (ground !== undefined) highest = larger(highest, subtractRatios(top, ground))
  }
  for (const bay of bays) {
    if (compareLengths(bay.length, widest) > 0) {
      widest = bay.length
      run = bay.run
    }
    if (bay.top === undefined) continue
    // Raked, two bays share the top of the post between them.
    if (bay.top.left !== before) rise(bay.left, bay.top.left)
    rise(bay.right, bay.top.right)
    before = bay.top.right
  }
  const { from, to } = runs[run] ?? { from: nothing, to: widest }
  return {
    bay: widest,
    run: lowestTerms(subtractRatios(to, from)),
    height: highest.over > 0n ? lowestTerms(highest) : undefined,
  }
}

/** The line posts of a section; where it has none, the ends of its only bay. */
export function lookedAtPosts(standing: readonly BuiltPost[]): LookedAtPosts {
  const line = standing.filter(({ post }) => post.kind === 'line')
  const posts = line.length > 0 ? line : standing
  const sizes = [...new Set(posts.map(({ size }) => size))]
  const outside = sizes.map((size) => size.outside).reduce(larger, nothing)
  const bearings = sizes.map(bearingOf)
  const narrowest = bearings.reduce<LookedAtPosts['bearing']>(
    (best, next) => (best === undefined || compareLengths(next.width, best.width) < 0 ? next : best),
    undefined,
  )
  return {
    outside: outside.over > 0n ? outside : undefined,
    bearing: narrowest && narrowest.width.over > 0n ? narrowest : undefined,
    hole: shallowest(posts),
  }
}

/** IBC 1807.3.2.1: the diameter of a round footing or post, the diagonal of a square one. */
function bearingOf({ hole, outside, member, footing }: PostSize): NonNullable<LookedAtPosts['bearing']> {
  if (footing.fill === 'concrete' && hole.over > 0n) return { of: 'concrete' as const, width: hole }
  return {
    of: 'post' as const,
    width: member.shape === 'square' ? fromMillimetres(asNumber(outside) * Math.SQRT2) : outside,
  }
}

/** The shallowest hole; undefined where any of the posts has none that is said. */
export function shallowest(posts: readonly BuiltPost[]): Hole | undefined {
  const [first] = posts
  if (first === undefined) return undefined
  let [depth, at] = [first.piece.depth, first]
  for (const built of posts) {
    if (built.piece.depth !== depth && smaller(built.piece.depth, depth) !== depth) {
      depth = built.piece.depth
      at = built
    }
  }
  if (depth.over <= 0n) return undefined
  const { measured } = at.post
  return { depth, path: measured?.depth ? `${measured.path}.depth` : `${at.size.path}.depth` }
}
