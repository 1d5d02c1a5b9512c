import type { Notebook, Section } from '../agreement/notebook.ts'
import { compareLengths, lengthOf, type Millimetres } from '../amounts/length.ts'
import { addRatios } from '../amounts/ratio.ts'
import { asNumber, fromMillimetres, larger, lowestTerms, nothing, subtractRatios } from './exact.ts'
import type { Found } from './finding.ts'
import type { GateLeaf } from './gateLeaf.ts'
import type { Ground } from './ground.ts'
import { aboveZero } from './neededLength.ts'
import type { PostLayout } from './postLayout.ts'
import { placeKey } from './runEdges.ts'
import { slopeLength } from './slopeLength.ts'

/** From one post of a run to the next. Elevations are above the stations' datum. */
export type Bay = {
  readonly section: number
  /** Place in the layout's runs. */
  readonly run: number
  /** Places in the layout's posts. */
  readonly left: number
  readonly right: number
  /** Horizontal. */
  readonly length: Millimetres
  /** Part of a brace assembly at an end of the run. */
  readonly brace: boolean
  /** Top of the fence at both ends: two heights where raked, one where stepped; undefined while no height is agreed. */
  readonly top: { readonly left: Millimetres; readonly right: Millimetres } | undefined
  /** From the left top to the right one; nothing where stepped or not known. */
  readonly rise: Millimetres
  /** Along the top: √(length² + rise²), to the whole nanometre; exact where there is no rise. */
  readonly along: Millimetres
}

export type FenceTops = {
  readonly bays: readonly Bay[]
  /** Elevation of the fence's top at each post: of the highest bay, leaf or header that meets it. */
  readonly postTops: readonly (Millimetres | undefined)[]
}

/**
 * Raked, the top runs straight from post to post, each at the agreed height over its ground. Stepped, each bay is level at
 * the higher of its two tops, and a post takes the higher of its two bays.
 */
export function fenceTops(
  notebook: Notebook,
  layout: PostLayout,
  leaves: readonly GateLeaf[],
  ground: Ground,
  found: Found,
): FenceTops {
  const agreed = notebook.sections.map((section, index) =>
    section.buildUp === undefined ? undefined : agreedHeight(section, index, found),
  )
  const postTops: (Millimetres | undefined)[] = layout.posts.map(() => undefined)
  const raise = (post: number, top: Millimetres) => {
    postTops[post] = larger(postTops[post] ?? top, top)
  }
  const bays = layout.runs.flatMap((run, runIndex) => {
    const section = notebook.sections[run.section]
    const height = agreed[run.section]
    const tops = run.posts.map((index) => {
      const at = layout.posts[index]?.at
      if (at === undefined || section === undefined || height === undefined) return undefined
      return lowestTerms(addRatios(ground.measured(section.height.measuredFrom, at), height))
    })
    const stepped = section?.buildUp?.slope === 'stepped'
    return run.posts.slice(1).map((right, index): Bay => {
      const left = run.posts[index] ?? right
      const [low, high] = [tops[index], tops[index + 1]]
      const top = low && high && (stepped ? levelTop(low, high) : { left: low, right: high })
      if (top) {
        raise(left, top.left)
        raise(right, top.right)
      }
      const [from, to] = [layout.posts[left]?.at ?? run.from, layout.posts[right]?.at ?? run.to]
      const length = lowestTerms(subtractRatios(to, from))
      const rise = top === undefined || stepped ? nothing : lowestTerms(subtractRatios(top.right, top.left))
      return {
        section: run.section,
        run: runIndex,
        left,
        right,
        length,
        rise,
        along: rise.over === 0n ? length : fromMillimetres(slopeLength(asNumber(length), asNumber(rise))),
        brace: index < run.braces.before || index >= run.posts.length - 1 - run.braces.after,
        top,
      }
    })
  })
  const indexOf = new Map(layout.posts.map((post, index) => [placeKey(post.planned), index]))
  for (const jamb of layout.jambs) {
    const leaf = leaves.find(({ gate }) => gate === jamb.gate.index)
    for (const place of [jamb.left, jamb.right]) {
      const index = indexOf.get(placeKey(place))
      if (index === undefined) continue
      const top = jambTop(notebook, jamb.section, leaf, ground, place)
      if (top) raise(index, top)
    }
  }
  return { bays, postTops }
}

function agreedHeight({ height }: Section, index: number, found: Found): Millimetres | undefined {
  const path = `sections[${index}].height.agreed`
  if (height.agreed === '') found(path, { kind: 'missing' })
  return aboveZero(height.agreed, path, found)
}

function levelTop(left: Millimetres, right: Millimetres): NonNullable<Bay['top']> {
  const level = compareLengths(left, right) < 0 ? right : left
  return { left: level, right: level }
}

/** A gate post reaches as high as the section's fence, its own leaf, and the header on it. */
function jambTop(
  notebook: Notebook,
  section: number | undefined,
  leaf: GateLeaf | undefined,
  ground: Ground,
  at: Millimetres,
): Millimetres | undefined {
  if (leaf?.header) return leaf.header.top
  const beside = section === undefined ? undefined : notebook.sections[section]
  const agreed = beside?.height.agreed ?? ''
  const ofFence =
    beside === undefined || agreed === ''
      ? undefined
      : addRatios(ground.measured(beside.height.measuredFrom, at), lengthOf(agreed))
  const ofLeaf =
    leaf?.height === undefined ? undefined : addRatios(ground.fence(at), addRatios(leaf.ground, leaf.height))
  if (ofFence === undefined) return ofLeaf && lowestTerms(ofLeaf)
  return lowestTerms(ofLeaf === undefined ? ofFence : larger(ofFence, ofLeaf))
}
