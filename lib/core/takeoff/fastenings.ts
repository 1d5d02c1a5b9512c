import { addRatios } from '../amounts/ratio.ts'
import { ceilingOf, multiplied, nothing } from './exact.ts'
import { counted } from './freeLineQuantities.ts'
import { numberOr } from './neededLength.ts'
import type { Quantity } from './quantity.ts'
import type { RailPieces } from './railPieces.ts'
import type { BuiltPost, SectionParts } from './sectionParts.ts'

/** Ties of one section: so many on each post of each run, so many on each rail of each bay. */
export function tieQuantities({ item, buildUp, runs }: SectionParts, rails: RailPieces): readonly Quantity[] {
  const { ties } = buildUp
  // Where two runs meet on one post, each is tied to it.
  const posts = runs.reduce((sum, run) => sum + run.posts.length, 0)
  const needed = addRatios(
    multiplied(counted(posts), numberOr(ties.perPost, nothing)),
    multiplied(counted(rails.rails), numberOr(ties.perRail, nothing)),
  )
  if (needed.over === 0n) return []
  return [
    {
      item,
      part: 'ties',
      name: { kind: 'ties', what: ties.what },
      quantity: String(ceilingOf(needed)),
      unit: 'each',
      kilograms: undefined,
      reclaimed: false,
      workings: [
        {
          step: 'ties',
          posts,
          perPost: ties.perPost || '0',
          rails: rails.rails,
          perRail: ties.perRail || '0',
        },
      ],
    },
  ]
}

/** A cap for every hollow post that no rail or header closes. */
export function capQuantities(item: Quantity['item'], posts: readonly BuiltPost[]): readonly Quantity[] {
  const open = posts.filter(({ size, mass }) => mass.hollow && !covered(size))
  if (open.length === 0) return []
  return [
    {
      item,
      part: 'caps',
      name: { kind: 'caps' },
      quantity: String(open.length),
      unit: 'each',
      kilograms: undefined,
      reclaimed: false,
      ofPosts: open.map(({ index }) => ({ post: index, amount: 1 })),
      workings: [{ step: 'caps', posts: open.length }],
    },
  ]
}

function covered({ top, rail }: BuiltPost['size']): boolean {
  return (top === 'saddle' || top === 'flat') && rail.over > 0n
}
