import type { Notebook } from '../agreement/notebook.ts'
import type { Millimetres } from '../amounts/length.ts'
import type { BuildUp } from './buildUp.ts'
import { sumOf } from './exact.ts'
import type { Bay, FenceTops } from './fenceTops.ts'
import type { MemberMass } from './memberMass.ts'
import type { ItemAt, LaidRun, Post, PostLayout } from './postLayout.ts'
import type { PostPiece } from './postPieces.ts'
import type { PostSize } from './postSize.ts'

/** A post with all that is known of it. */
export type BuiltPost = {
  readonly index: number
  readonly post: Post
  readonly size: PostSize
  readonly piece: PostPiece
  readonly mass: MemberMass
}

/** What belongs to one section with a build-up. */
export type SectionParts = {
  readonly item: ItemAt
  readonly path: string
  readonly buildUp: BuildUp
  readonly runs: readonly LaidRun[]
  readonly bays: readonly Bay[]
  /** Counted with this section: a post that two share is counted with the first along the line. */
  readonly posts: readonly BuiltPost[]
  /** Gates that stand in or beside it. */
  readonly gates: number
  /** Length along the fence of each run, sloped where raked. */
  readonly runLengths: readonly Millimetres[]
  /** The same, horizontal. */
  readonly flatLengths: readonly Millimetres[]
  /** Horizontal length of all runs. */
  readonly length: Millimetres
}

/** Sorts what was laid out by section, in one pass over the line. */
export function sectionParts(
  notebook: Notebook,
  layout: PostLayout,
  tops: FenceTops,
  posts: readonly BuiltPost[],
): readonly SectionParts[] {
  const runs = gathered(layout.runs, ({ section }) => section)
  const bays = gathered(tops.bays, ({ section }) => section)
  const own = gathered(
    posts.filter(({ post }) => post.item.list === 'sections'),
    ({ post }) => post.item.index,
  )
  const gates = gathered(layout.jambs, ({ section }) => section ?? -1)
  const byRun = gathered(tops.bays, ({ run }) => run)
  const runIndex = new Map(layout.runs.map((run, index) => [run, index]))
  const baysOf = (run: LaidRun) => byRun.get(runIndex.get(run) ?? -1) ?? []
  return notebook.sections.flatMap(({ buildUp }, index) => {
    if (buildUp === undefined) return []
    const ownRuns = runs.get(index) ?? []
    const ownBays = bays.get(index) ?? []
    return [
      {
        item: { list: 'sections' as const, index },
        path: `sections[${index}].buildUp`,
        buildUp,
        runs: ownRuns,
        bays: ownBays,
        posts: own.get(index) ?? [],
        gates: gates.get(index)?.length ?? 0,
        runLengths: ownRuns.map((run) => sumOf(baysOf(run).map(({ along }) => along))),
        flatLengths: ownRuns.map((run) => sumOf(baysOf(run).map(({ length }) => length))),
        length: sumOf(ownBays.map((bay) => bay.length)),
      },
    ]
  })
}

/** Things by a number that each has, in their order. */
export function gathered<Thing>(
  things: readonly Thing[],
  numberOf: (thing: Thing) => number,
): ReadonlyMap<number, readonly Thing[]> {
  const by = new Map<number, Thing[]>()
  for (const thing of things) {
    const number = numberOf(thing)
    const list = by.get(number)
    if (list) list.push(thing)
    else by.set(number, [thing])
  }
  return by
}
