import type { Notebook } from '../agreement/notebook.ts'
import { compareLengths, type Millimetres } from '../amounts/length.ts'
import type { PlacedLine } from '../boundary/placedLine.ts'
import { type BayLayout, layOutBays } from './bays.ts'
import type { BraceSpec } from './buildUp.ts'
import { lowestTerms, subtractRatios } from './exact.ts'
import type { Found } from './finding.ts'
import { aboveZero, countOr, lengthOrNothing, neededLength } from './neededLength.ts'
import { type Edge, edgesOf, kindAt, type PostKind, placeKey, specialName } from './runEdges.ts'
import { type CornerPoint, cornerPoints, type Jambs, jambsOf, type Run, runsOf } from './runs.ts'

/** The section or gate with which something is counted. */
export type ItemAt = { readonly list: 'sections' | 'gates'; readonly index: number }

/** One post of the line, however many runs and gates share it. Places are exact and along the line. */
export type Post = {
  readonly planned: Millimetres
  /** Where it stands: as measured on site, else as planned. */
  readonly at: Millimetres
  readonly kind: PostKind
  /** On a brace post: the kind of post that it braces. */
  readonly braces?: PostKind
  readonly sections: readonly number[]
  readonly gates: readonly number[]
  readonly item: ItemAt
  readonly measured?: {
    readonly path: string
    readonly why: string
    /** Depth of its hole; undefined: as in the build-up. */
    readonly depth?: Millimetres
  }
}

/** A run with its posts, by their places in `PostLayout.posts`, in order. */
export type LaidRun = Run & {
  readonly posts: readonly number[]
  readonly layout: BayLayout
  readonly spacing: Millimetres
  /** How many bays at its beginning and at its end are brace assemblies, and the wire of one of each. */
  readonly braces: {
    readonly before: number
    readonly after: number
    readonly wireBefore: Millimetres
    readonly wireAfter: Millimetres
  }
}

export type PostLayout = {
  /** In order along the line. */
  readonly posts: readonly Post[]
  readonly runs: readonly LaidRun[]
  readonly jambs: readonly Jambs[]
  readonly corners: readonly CornerPoint[]
}

type Draft = {
  planned: Millimetres
  kind: PostKind
  braces?: PostKind
  sections: number[]
  gates: number[]
  item: ItemAt
}

/** Where posts are planned. A section or gate without a build-up gets none. */
export function layOutPosts(notebook: Notebook, placed: PlacedLine, found: Found): PostLayout {
  const jambs = jambsOf(notebook, placed)
  const corners = cornerPoints(notebook, jambs, found)
  const built = placed.sections.filter(({ section }) => section.buildUp !== undefined)
  const runs = [...built]
    .sort((left, right) => compareLengths(left.from, right.from))
    .flatMap((section) => longEnough(notebook, runsOf(section, jambs, corners), found))
  const edges = edgesOf(runs, jambs, corners)
  const drafts = new Map<string, Draft>()
  for (const jamb of jambs) addJambs(notebook, jamb, drafts)
  const laid = runs.flatMap((run) => {
    const layout = layOutRun(notebook, run, edges, found)
    if (layout === undefined) return []
    for (const [index, place] of layout.layout.places.entries())
      addPost(drafts, run, layout, edges, place, index)
    return [layout]
  })
  const posts = [...drafts.values()].sort((left, right) => compareLengths(left.planned, right.planned))
  const indexOf = new Map(posts.map((post, index) => [placeKey(post.planned), index]))
  return {
    posts: posts.map((post) => ({ ...post, at: post.planned })),
    runs: laid.map((run) => ({
      ...run,
      posts: run.layout.places.map((place) => indexOf.get(placeKey(place)) ?? 0),
    })),
    jambs,
    corners,
  }
}

/** A run shorter than a post is no run: the posts at its ends would stand in one another. */
function longEnough(notebook: Notebook, runs: readonly Run[], found: Found): readonly Run[] {
  return runs.filter((run) => {
    const length = subtractRatios(run.to, run.from)
    const post = lengthOrNothing(notebook.sections[run.section]?.buildUp?.posts.outside ?? '')
    if (compareLengths(length, post) >= 0) return true
    found(`sections[${run.section}]`, { kind: 'posts-too-close', apart: lowestTerms(length), post })
    return false
  })
}

function addJambs(
  notebook: Notebook,
  { gate, left, right, section }: Jambs,
  drafts: Map<string, Draft>,
): void {
  const ownItem = gate.gate.buildUp !== undefined
  const ofSection = section !== undefined && notebook.sections[section]?.buildUp !== undefined
  if (!ownItem && !ofSection) return
  for (const planned of [left, right]) {
    const draft = drafts.get(placeKey(planned))
    if (draft) {
      draft.gates.push(gate.index)
      continue
    }
    drafts.set(placeKey(planned), {
      planned,
      kind: 'gate',
      sections: ofSection ? [section] : [],
      gates: [gate.index],
      item: ownItem ? { list: 'gates', index: gate.index } : { list: 'sections', index: section ?? 0 },
    })
  }
}

function addPost(
  drafts: Map<string, Draft>,
  run: Run,
  { layout, braces }: Omit<LaidRun, 'posts'>,
  edges: ReadonlyMap<string, Edge>,
  planned: Millimetres,
  index: number,
): void {
  const key = placeKey(planned)
  const draft = drafts.get(key)
  if (draft) {
    if (!draft.sections.includes(run.section)) draft.sections.push(run.section)
    return
  }
  const last = layout.places.length - 1
  const ofBrace =
    index > 0 && index < last
      ? index <= braces.before
        ? kindAt(edges, run.from)
        : last - index <= braces.after
          ? kindAt(edges, run.to)
          : undefined
      : undefined
  drafts.set(key, {
    planned,
    kind: ofBrace === undefined ? kindAt(edges, planned) : 'brace',
    ...(ofBrace === undefined ? {} : { braces: ofBrace }),
    sections: [run.section],
    gates: [],
    item: { list: 'sections', index: run.section },
  })
}

function layOutRun(
  notebook: Notebook,
  run: Run,
  edges: ReadonlyMap<string, Edge>,
  found: Found,
): Omit<LaidRun, 'posts'> | undefined {
  const path = `sections[${run.section}].buildUp`
  const buildUp = notebook.sections[run.section]?.buildUp
  if (buildUp === undefined) return undefined
  const spacing = neededLength(buildUp.posts.spacing, `${path}.posts.spacing`, found)
  if (spacing === undefined) return undefined
  const toStock = buildUp.posts.layout === 'stock'
  const stock = toStock ? neededLength(buildUp.rails.stock, `${path}.rails.stock`, found) : undefined
  if (toStock && stock === undefined) return undefined
  const [before, after] = [run.from, run.to].map((at) => braceAt(notebook, run.section, edges, at))
  const [bracesBefore, bracesAfter] = [braceSpans(before, found), braceSpans(after, found)]
  const layout = layOutBays(run.from, run.to, {
    spacing,
    ...(stock ? { stock } : {}),
    bracesBefore,
    bracesAfter,
  })
  if (!layout.bracesFit) {
    const braces = [...bracesBefore, ...bracesAfter].reduce((sum, span) =>
      subtractRatios(sum, { over: -span.over, under: span.under }),
    )
    found(path, {
      kind: 'brace-does-not-fit',
      run: lowestTerms(subtractRatios(run.to, run.from)),
      braces: lowestTerms(braces),
    })
  }
  return {
    ...run,
    layout,
    spacing,
    braces: {
      ...(layout.bracesFit
        ? { before: bracesBefore.length, after: bracesAfter.length }
        : { before: 0, after: 0 }),
      wireBefore: lengthOrNothing(before?.brace.wire ?? ''),
      wireAfter: lengthOrNothing(after?.brace.wire ?? ''),
    },
  }
}

type BraceAt = { readonly brace: BraceSpec; readonly path: string }

/** The assembly beside the end of a run: as its gate's own posts say, else as the section's posts of that kind. */
function braceAt(
  notebook: Notebook,
  section: number,
  edges: ReadonlyMap<string, Edge>,
  at: Millimetres,
): BraceAt | undefined {
  for (const gate of edges.get(placeKey(at))?.gates ?? []) {
    const brace = notebook.gates[gate]?.buildUp?.posts?.brace
    if (brace !== undefined && brace.span !== '') return { brace, path: `gates[${gate}].buildUp.posts.brace` }
  }
  const name = specialName[kindAt(edges, at)]
  const brace = name === undefined ? undefined : notebook.sections[section]?.buildUp?.[name]?.brace
  return brace && { brace, path: `sections[${section}].buildUp.${name}.brace` }
}

function braceSpans(at: BraceAt | undefined, found: Found): readonly Millimetres[] {
  if (at === undefined) return []
  const span = aboveZero(at.brace.span, `${at.path}.span`, found)
  return span === undefined ? [] : Array.from({ length: countOr(at.brace.assemblies, 1) }, () => span)
}
