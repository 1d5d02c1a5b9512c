import type { Notebook } from '../agreement/notebook.ts'
import type { Millimetres } from '../amounts/length.ts'
import { placedLine } from '../boundary/placedLine.ts'
import { bayFindings } from './bayFindings.ts'
import { type CutJob, type CutNeed, cutJobs } from './cutJobs.ts'
import { enteredFindings } from './enteredFindings.ts'
import { type FenceTops, fenceTops } from './fenceTops.ts'
import type { Finding, FindingFacts } from './finding.ts'
import { gateLeaf } from './gateLeaf.ts'
import { type GateTakeOff, gateTakeOff } from './gateQuantities.ts'
import { type Ground, groundOf } from './ground.ts'
import { type HeightSeen, heightsSeen, holdLimits, type LimitHeld } from './heightsSeen.ts'
import { withMeasuredPosts } from './measuredPosts.ts'
import { type MemberMass, memberMass } from './memberMass.ts'
import { mitreCuts } from './mitreCuts.ts'
import { placementFindings } from './placementFindings.ts'
import { layOutPosts, type PostLayout } from './postLayout.ts'
import { postPieces } from './postPieces.ts'
import { type PostSize, postSizes } from './postSize.ts'
import type { Quantity } from './quantity.ts'
import { placeKey } from './runEdges.ts'
import { type BuiltPost, gathered, sectionParts } from './sectionParts.ts'
import { type SectionTakeOff, sectionTakeOff } from './sectionQuantities.ts'
import { type PostSetback, postSetbacks, type Strips, stripsOfLine } from './setbacks.ts'
import { type SharedPost, sharedPosts } from './sharedPosts.ts'
import { type Weights, weightsOf } from './weights.ts'
import { type WindCheck, windChecks } from './windCheck.ts'

/** What the fence takes, worked out from the notebook. Lengths exact in millimetres, weights in kilograms. */
export type TakeOff = {
  readonly layout: PostLayout
  /** Each post of the layout, in the same order, with its size and its piece. */
  readonly posts: readonly BuiltPost[]
  readonly tops: FenceTops
  readonly ground: Ground
  readonly sections: readonly SectionTakeOff[]
  readonly gates: readonly GateTakeOff[]
  /** Posts that two of them share: each bears one half of what is offered as cost lines. */
  readonly sharedPosts: readonly SharedPost[]
  /** Of all sections and gates, in file order. */
  readonly quantities: readonly Quantity[]
  readonly weights: Weights
  readonly cutJobs: readonly CutJob[]
  readonly setbacks: { readonly posts: readonly PostSetback[]; readonly strips: Strips }
  readonly heights: readonly HeightSeen[]
  /** Each limit that somebody named against the highest place of its stretch. */
  readonly limits: readonly LimitHeld[]
  /** One for each of `sections`. */
  readonly wind: readonly WindCheck[]
  readonly findings: readonly Finding[]
}

/**
 * From dimensions to quantities. Never throws on what a person typed and never refuses: what clashes or lacks is a
 * finding, and what can be worked out without it is. Every figure of it is for estimating, none is a design.
 */
export function takeOff(notebook: Notebook): TakeOff {
  const findings = new Map<string, Finding>()
  const found = (path: string, facts: FindingFacts) => {
    const key = `${path} ${facts.kind}`
    if (!findings.has(key)) findings.set(key, { path, ...facts })
  }
  const placed = placedLine(notebook)
  placementFindings(notebook, placed, found)
  enteredFindings(notebook, found)
  const ground = groundOf(notebook.line.stations)
  const layout = withMeasuredPosts(notebook, layOutPosts(notebook, placed, found), found)
  const leaves = layout.jambs.flatMap((jambs) =>
    jambs.gate.gate.buildUp ? [gateLeaf(notebook, jambs, jambs.gate.gate.buildUp, ground, found)] : [],
  )
  const tops = fenceTops(notebook, layout, leaves, ground, found)
  bayFindings(layout, tops, found)
  const posts = builtPosts(notebook, layout, tops, leaves, ground, found)
  const mitres = mitreCuts(notebook, layout)
  const sections = sectionParts(notebook, layout, tops, posts).map((parts) =>
    sectionTakeOff(
      notebook,
      parts,
      { posts: layout.posts, mitres: mitres.get(parts.item.index) ?? [] },
      found,
    ),
  )
  const gatePosts = gathered(
    posts.filter(({ post }) => post.item.list === 'gates'),
    ({ post }) => post.item.index,
  )
  const gates = leaves.flatMap((leaf) => {
    const buildUp = notebook.gates[leaf.gate]?.buildUp
    const own = gatePosts.get(leaf.gate) ?? []
    return buildUp ? [gateTakeOff(notebook, leaf, buildUp, own, found)] : []
  })
  const quantities = [...sections, ...gates].flatMap((one) => one.quantities)
  const heights = heightsSeen(notebook, placed, layout.posts, tops, ground)
  const limits = holdLimits(notebook, heights, found)
  const wind = windChecks(
    notebook,
    sections.map(({ parts }) => parts),
    layout,
    posts,
    found,
  )
  return {
    layout,
    posts,
    tops,
    ground,
    sections,
    gates,
    sharedPosts: sharedPosts(notebook, layout),
    quantities,
    weights: weightsOf(quantities),
    cutJobs: cutJobs(
      [...sections, ...gates].flatMap(({ needs }) => needs).concat(postNeeds(posts)),
      notebook.inventory,
    ),
    setbacks: { posts: postSetbacks(notebook, posts, ground), strips: stripsOfLine(notebook) },
    heights,
    limits,
    wind,
    findings: [...findings.values()],
  }
}

function builtPosts(
  notebook: Notebook,
  layout: PostLayout,
  tops: FenceTops,
  leaves: Parameters<typeof postPieces>[3],
  ground: Ground,
  found: Parameters<typeof postPieces>[5],
): readonly BuiltPost[] {
  const sizes = postSizes(notebook, layout.posts)
  const pieces = postPieces(layout, sizes, tops, leaves, ground, found)
  const masses = new Map<PostSize, MemberMass>()
  return layout.posts.flatMap((post, index) => {
    const [size, piece] = [sizes[index], pieces[index]]
    if (size === undefined || piece === undefined) return []
    const mass = masses.get(size) ?? memberMass(size.member, size.path, found)
    masses.set(size, mass)
    return [{ index, post, size, piece, mass }]
  })
}

/** Pieces of posts: those of one item and one size together, alike ones counted. */
function postNeeds(posts: readonly BuiltPost[]): readonly CutNeed[] {
  const needs = new Map<
    string,
    { built: BuiltPost; pieces: Map<string, { length: Millimetres; count: number }> }
  >()
  for (const built of posts) {
    const { length } = built.piece
    if (length === undefined) continue
    const { item } = built.post
    const key = `${item.list}${item.index} ${built.size.path}`
    const need = needs.get(key) ?? { built, pieces: new Map() }
    needs.set(key, need)
    const alike = placeKey(length)
    need.pieces.set(alike, { length, count: (need.pieces.get(alike)?.count ?? 0) + 1 })
  }
  return [...needs.values()].map(({ built, pieces }) => ({
    member: built.size.member,
    item: built.post.item,
    part: 'posts',
    pieces: [...pieces.values()],
  }))
}
