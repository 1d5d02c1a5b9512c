import type { Notebook } from '../core/agreement/notebook.ts'
import { inMillimetres } from '../core/amounts/length.ts'
import type { Bay } from '../core/takeoff/fenceTops.ts'
import type { GateLeaf } from '../core/takeoff/gateLeaf.ts'
import { postsBySection } from '../core/takeoff/measuredPosts.ts'
import type { BuiltPost } from '../core/takeoff/sectionParts.ts'
import type { Answer } from '../core/takeoff/setbacks.ts'
import { type TakeOff, takeOff } from '../core/takeoff/takeOff.ts'

/** A post of the take-off with its places as floats, in millimetres: along the line, and above the stations' datum. */
export type DrawnPost = {
  readonly built: BuiltPost
  /** In the take-off's list of posts. */
  readonly place: number
  readonly at: number
  readonly width: number
  /** Diameter; 0: no hole. */
  readonly hole: number
  readonly ground: number
  readonly bottom: number
  readonly top: number | undefined
  readonly crosses: Answer
}

export type DrawnBay = {
  readonly bay: Bay
  readonly from: number
  readonly to: number
  readonly top: { readonly left: number; readonly right: number } | undefined
}

/** What the take-off says stands along the line; nothing of it is worked out here. */
export type BuiltFence = {
  readonly found: TakeOff
  readonly posts: readonly DrawnPost[]
  readonly bays: readonly DrawnBay[]
  /** Sections whose bays are laid out, and gates whose posts are. */
  readonly sections: ReadonlySet<number>
  readonly gates: ReadonlySet<number>
  readonly leaves: ReadonlyMap<number, GateLeaf>
  /** A post's number in each section, counted from 1. */
  readonly numbers: ReadonlyMap<number, ReadonlyMap<number, number>>
}

/** The take-off of a notebook in which a section or a gate has a build-up; undefined where none has. */
export function takeOffWhereBuilt(notebook: Notebook): TakeOff | undefined {
  return [...notebook.sections, ...notebook.gates].some(({ buildUp }) => buildUp !== undefined)
    ? takeOff(notebook)
    : undefined
}

export function builtFence(found: TakeOff): BuiltFence {
  const posts = found.posts.map((built, index): DrawnPost => {
    const { post, size, piece } = built
    const ground = inMillimetres(piece.ground.fence)
    return {
      built,
      place: index,
      at: inMillimetres(post.at),
      width: inMillimetres(size.outside),
      hole: inMillimetres(size.hole),
      ground,
      bottom: ground - inMillimetres(piece.depth),
      top: piece.top && inMillimetres(piece.top),
      crosses: found.setbacks.posts[index]?.crosses ?? 'cannot tell',
    }
  })
  const byIndex = new Map(posts.map((post) => [post.built.index, post]))
  const bays = found.tops.bays.flatMap((bay): DrawnBay[] => {
    const [left, right] = [byIndex.get(bay.left), byIndex.get(bay.right)]
    if (left === undefined || right === undefined) return []
    const top = bay.top && { left: inMillimetres(bay.top.left), right: inMillimetres(bay.top.right) }
    return [{ bay, from: left.at, to: right.at, top }]
  })
  const numbers = [...postsBySection(found.layout.posts)].map(
    ([section, own]) => [section, new Map(own.map((post, index) => [post, index + 1]))] as const,
  )
  return {
    found,
    posts,
    bays,
    sections: new Set(bays.map(({ bay }) => bay.section)),
    gates: new Set(found.posts.flatMap(({ post }) => post.gates)),
    leaves: new Map(found.gates.map(({ leaf }) => [leaf.gate, leaf])),
    numbers: new Map(numbers),
  }
}

/** Only what stands from one place to another, and of bays only those of the sections that are asked for. */
export function within(
  fence: BuiltFence,
  from: number,
  to: number,
  sections?: ReadonlySet<number>,
): BuiltFence {
  const inside = (at: number) => at >= from - 0.001 && at <= to + 0.001
  const bays = fence.bays.filter(
    (bay) => inside(bay.from) && inside(bay.to) && (sections?.has(bay.bay.section) ?? true),
  )
  const posts = fence.posts.filter(({ at }) => inside(at))
  const gates = new Set(posts.flatMap(({ built }) => built.post.gates))
  return {
    ...fence,
    posts,
    bays,
    gates,
    leaves: new Map([...fence.leaves].filter(([gate]) => gates.has(gate))),
    sections: new Set(bays.map(({ bay }) => bay.section)),
  }
}

/** The number that a person gives a post: its place in the section asked for, else in the one that it is counted with. */
export function postNumber(
  fence: BuiltFence,
  { index, post }: BuiltPost,
  asked?: number,
): { readonly section: number; readonly number: number } | undefined {
  const own = post.item.list === 'sections' ? post.item.index : post.sections[0]
  const section = asked !== undefined && post.sections.includes(asked) ? asked : own
  const number = section === undefined ? undefined : fence.numbers.get(section)?.get(index)
  return section === undefined || number === undefined ? undefined : { section, number }
}
