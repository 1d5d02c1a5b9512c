import type { Notebook } from '../agreement/notebook.ts'
import { compareLengths, type Millimetres } from '../amounts/length.ts'
import { type DepthRule, depthRules } from './depthRules.ts'
import { asNumber, fromMillimetres } from './exact.ts'
import type { Found } from './finding.ts'
import type { ItemAt, PostLayout } from './postLayout.ts'
import type { BuiltPost, SectionParts } from './sectionParts.ts'
import { type Lack, type SiteFigures, siteFigures } from './siteFigures.ts'
import { solidShare } from './solidShare.ts'
import { lookedAtPosts, shallowest, type TypicalBay, typicalBay } from './typicalBay.ts'
import { millimetresPerFoot } from './unitFactors.ts'
import { neededDepth, type SizedBay, timesWithout, windLoad } from './windLoad.ts'
import type { WindStep } from './windStep.ts'

/**
 * A look at the wind on a section's line posts: an orientation, and never an approval. Whoever must rely on a fence has it
 * designed by a licensed engineer. End, corner and gate posts are not looked at: half a bay of wind falls on an end post,
 * and what hangs on a gate post is with the gate. The stronger wind at the ends of a long wall is not reckoned.
 */
export type WindCheck = {
  readonly item: ItemAt
  readonly outcome: 'no shortfall' | 'shortfall' | 'cannot tell'
  /** What has to be said before it can tell. */
  readonly lacks: readonly Lack[]
  /** How it came about, as far as it could be reckoned. */
  readonly steps: readonly WindStep[]
  /** Of the shallowest line post's hole; undefined where it is not said. */
  readonly depth: Millimetres | undefined
  /** What the pole equation asks for. */
  readonly needed: Millimetres | undefined
  /** Common practice and frost, beside it. */
  readonly rules: readonly DepthRule[]
  /** Layers that take far more wind than open mesh. */
  readonly catches: readonly CatchesWind[]
}

export type CatchesWind = {
  readonly layer: number
  readonly kind: 'board' | 'strip'
  /** How many times the force is what it would be without layers of this kind; undefined where it can't be told. */
  readonly times: number | undefined
}

/** One look for each section with a build-up, in the order of `sections`. */
export function windChecks(
  notebook: Notebook,
  sections: readonly SectionParts[],
  layout: PostLayout,
  posts: readonly BuiltPost[],
  found: Found,
): readonly WindCheck[] {
  const site = siteFigures(notebook)
  const standing = new Map<number, BuiltPost[]>()
  for (const built of posts) {
    for (const section of built.post.sections) {
      const list = standing.get(section)
      if (list) list.push(built)
      else standing.set(section, [built])
    }
  }
  return sections.map((parts) =>
    windCheck(
      notebook,
      site,
      parts,
      typicalBay(parts, layout, posts),
      standing.get(parts.item.index) ?? [],
      found,
    ),
  )
}

function windCheck(
  notebook: Notebook,
  site: SiteFigures,
  parts: SectionParts,
  bay: TypicalBay | undefined,
  standing: readonly BuiltPost[],
  found: Found,
): WindCheck {
  const { item, path, buildUp } = parts
  const looked = lookedAtPosts(standing)
  const sized: SizedBay | undefined = bay?.height && { ...bay, height: bay.height }
  const postWidth = looked.outside ? asNumber(looked.outside) : 0
  const outline = sized && {
    bay: asNumber(sized.bay),
    height: asNumber(sized.height),
    post: postWidth,
  }
  // Nothing written down is not nothing there: a fence of posts and rails alone says so by a layer of 0 percent.
  const unsaid: readonly Lack[] = [{ path: `${path}.infill`, what: 'solid share' }]
  const solid = outline && (buildUp.infill.length === 0 ? unsaid : solidShare(buildUp, outline, path))
  const known = solid && 'whole' in solid ? solid : undefined
  const load = sized && known && windLoad(notebook, site, parts, sized, known)
  const need = load && neededDepth(notebook, site, looked, load.force)
  const needed = need && fromMillimetres(need.embedment.depthFeet * millimetresPerFoot)
  const { hole } = looked
  const all = shallowest(standing)
  const catches = catching(
    parts,
    (kind) => sized && load && timesWithout(kind, parts, sized, postWidth, load),
  )

  if (needed && hole && compareLengths(hole.depth, needed) < 0)
    found(hole.path, { kind: 'shallower-than-wind-asks', depth: hole.depth, needed })
  if (site.frost && all && compareLengths(all.depth, site.frost) < 0)
    found(all.path, {
      kind: 'shallower-than-frost',
      depth: all.depth,
      frost: site.frost,
      saidBy: notebook.line.site.frost.saidBy,
    })
  if (load)
    for (const { layer, kind, times } of catches)
      found(`${path}.infill[${layer}]`, { kind: 'catches-wind', layer: kind, times })

  const lacks: readonly (Lack | undefined)[] = [
    ...site.lacks,
    bay === undefined ? { path, what: 'bays' } : undefined,
    bay && !bay.height ? { path: `sections[${item.index}].height.agreed`, what: 'height' } : undefined,
    looked.bearing ? undefined : { path: `${path}.posts.outside`, what: 'post width' },
    hole ? undefined : { path: `${path}.posts.depth`, what: 'hole depth' },
    ...(solid && !('whole' in solid) ? solid : []),
  ]
  return {
    item,
    outcome:
      needed === undefined || hole === undefined
        ? 'cannot tell'
        : compareLengths(hole.depth, needed) < 0
          ? 'shortfall'
          : 'no shortfall',
    lacks: lacks.filter((lack) => lack !== undefined),
    steps: [
      ...(sized ? [{ step: 'bay' as const, ...sized }] : []),
      ...(load?.steps ?? []),
      ...(need?.steps ?? []),
      ...(needed && hole ? [{ step: 'compare' as const, depth: hole.depth, needed }] : []),
    ],
    depth: hole?.depth,
    needed,
    rules: depthRules(sized && asNumber(sized.height), site.frost, { line: hole?.depth, all: all?.depth }),
    catches,
  }
}

function catching(
  { buildUp }: SectionParts,
  times: (kind: CatchesWind['kind']) => number | undefined,
): readonly CatchesWind[] {
  return buildUp.infill.flatMap(({ kind }, layer) =>
    kind === 'board' || kind === 'strip' ? [{ layer, kind, times: times(kind) }] : [],
  )
}
