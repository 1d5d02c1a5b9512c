import { compareLengths } from '../amounts/length.ts'
import { assert } from '../assert.ts'
import { profileKey } from './cutJobs.ts'
import {
  asNumber,
  larger,
  lowestTerms,
  multiplied,
  nothing,
  one,
  smaller,
  subtractRatios,
  sumOf,
  withPercent,
} from './exact.ts'
import type { Found } from './finding.ts'
import { aboveZero } from './neededLength.ts'
import type { ItemAt, LaidRun } from './postLayout.ts'
import type { PostSize } from './postSize.ts'
import { type Quantity, type QuantityName, wholeQuantity } from './quantity.ts'
import type { BuiltPost } from './sectionParts.ts'
import type { Step } from './step.ts'

type Which = Extract<QuantityName, { kind: 'posts' }>['which']

/** Posts of one item: one quantity for each size, bought by the piece, each with the length it is cut to. */
export function postQuantities(
  item: ItemAt,
  posts: readonly BuiltPost[],
  runs: readonly LaidRun[],
  ids: Ids,
  found: Found,
): readonly Quantity[] {
  const groups = new Map<string, BuiltPost[]>()
  const keys = new Map<PostSize, string>()
  for (const built of posts) {
    const key =
      keys.get(built.size) ?? `${whichOf(built)} ${profileKey(built.size.member)} ${built.size.member.what}`
    keys.set(built.size, key)
    const group = groups.get(key)
    if (group) group.push(built)
    else groups.set(key, [built])
  }
  const parts = new Map<string, number>()
  const laidOut = layoutSteps(posts, runs)
  return [...groups.values()].map((group) =>
    postQuantity(item, group, laidOut, posts.length, ids, parts, found),
  )
}

function postQuantity(
  item: ItemAt,
  group: readonly BuiltPost[],
  laidOut: readonly Step[],
  all: number,
  ids: Ids,
  parts: Map<string, number>,
  found: Found,
): Quantity {
  const [first] = group
  assert(first !== undefined, 'a group of posts has a post')
  const { member, path } = first.size
  const which = whichOf(first)
  const key = partKey(item, first, which, ids)
  const before = parts.get(key) ?? 0
  parts.set(key, before + 1)
  const lengths = group.flatMap(({ piece }) => (piece.length === undefined ? [] : [piece.length]))
  const total = sumOf(lengths)
  const longest = lengths.reduce(larger, nothing)
  const shortest = lengths.reduce(smaller, longest)
  const stock = aboveZero(member.stock, `${path}.stock`, found)
  const tooLong = stock ? lengths.filter((length) => compareLengths(length, stock) > 0).length : 0
  if (stock && tooLong > 0)
    found(`${path}.stock`, { kind: 'post-longer-than-stock', piece: longest, stock, posts: tooLong })
  const { kilogramsPerMetre } = first.mass
  return {
    item,
    part: before === 0 ? key : `${key} ${before + 1}`,
    name: { kind: 'posts', which, member, longest, alike: compareLengths(longest, shortest) === 0 },
    quantity: wholeQuantity(
      multiplied(
        { over: BigInt(group.length), under: 1n },
        member.waste === '' ? one : withPercent(member.waste),
      ),
    ),
    unit: 'each',
    kilograms: kilogramsPerMetre === undefined ? undefined : (asNumber(total) / 1000) * kilogramsPerMetre,
    reclaimed: member.reclaimed,
    ofPosts: group.map(({ index }) => ({ post: index, amount: 1 })),
    workings: [
      ...laidOut,
      ...(group.length === all ? [] : [{ step: 'of these' as const, posts: group.length }]),
      ...(lengths.length === 0
        ? []
        : [{ step: 'post piece' as const, least: shortest, most: longest, total }]),
      ...(member.waste === '' ? [] : [{ step: 'waste' as const, percent: member.waste }]),
    ],
  }
}

/** Ids of the notebook's items, for a key that stays the same when sections change places. */
export type Ids = Readonly<Record<ItemAt['list'], readonly { readonly id: string }[]>>

/** A post whose stouter size belongs to the neighbour is a part of its own, named by the neighbour. */
function partKey(item: ItemAt, { size }: BuiltPost, which: Which, ids: Ids): string {
  const [, list, index] = /^(sections|gates)\[([0-9]+)\]/.exec(size.path) ?? []
  if (list === undefined || (list === item.list && Number(index) === item.index)) return which
  return `${which} of ${ids[list === 'gates' ? 'gates' : 'sections'][Number(index)]?.id ?? ''}`
}

/** The last word of the path where the size is typed; a gate's own posts are gate posts. */
function whichOf({ post, size }: BuiltPost): Which {
  if (post.gates.length > 0 && size.path.startsWith('gates')) return 'gatePosts'
  const key = size.path.slice(size.path.lastIndexOf('.') + 1)
  return key === 'endPosts' || key === 'cornerPosts' || key === 'gatePosts' ? key : 'posts'
}

function layoutSteps(posts: readonly BuiltPost[], runs: readonly LaidRun[]): readonly Step[] {
  if (runs.length === 0) return []
  const steps = runs.map(({ layout, from, to, spacing, braces }): Step => {
    const run = lowestTerms(subtractRatios(to, from))
    const common = { run, bay: layout.bay, bays: layout.bays, braces: braces.before + braces.after }
    return layout.remainder === undefined && compareLengths(layout.bay, spacing) <= 0 && layout.bays > 0
      ? { step: 'equal bays', spacing, ...common }
      : { step: 'stock bays', remainder: layout.remainder, ...common }
  })
  const bays = runs.reduce((sum, run) => sum + run.posts.length - 1, 0)
  return [
    ...steps,
    {
      step: 'posts',
      bays,
      runs: runs.length,
      posts: posts.length,
      elsewhere: bays + runs.length - posts.length,
    },
  ]
}
