import type { Notebook, Section } from '../agreement/notebook.ts'
import { compareLengths, lengthOf, type Millimetres } from '../amounts/length.ts'
import { addRatios, multiplyRatios } from '../amounts/ratio.ts'
import type { PlacedLine, PlacedSection } from '../boundary/placedLine.ts'
import { type Household, households } from '../people/household.ts'
import { divideRatios, larger, lowestTerms, smaller, subtractRatios } from './exact.ts'
import type { Bay, FenceTops } from './fenceTops.ts'
import type { Found } from './finding.ts'
import type { Ground } from './ground.ts'
import { aboveZero } from './neededLength.ts'
import type { Post } from './postLayout.ts'

/** The fence's top over each household's own ground, at one place. */
export type HeightSeen = {
  readonly at: Millimetres
  readonly place: { readonly station: number } | { readonly post: number } | { readonly limit: number }
  /** Elevation of the fence's top. */
  readonly top: Millimetres
  readonly a: Millimetres
  readonly b: Millimetres
}

/**
 * At every station, every post and every end of a limit's zone. Between those places top and ground both run straight, so
 * that no higher place lies between them. Where two bays of different height meet, the higher one counts.
 */
export function heightsSeen(
  notebook: Notebook,
  placed: PlacedLine,
  posts: readonly Post[],
  tops: FenceTops,
  ground: Ground,
): readonly HeightSeen[] {
  const topAt = topsAlong(placed, posts, tops, ground)
  const seen = (at: Millimetres, place: HeightSeen['place'], top: Millimetres | undefined): HeightSeen[] => {
    if (top === undefined) return []
    return [{ at, place, top, a: heightOver(ground, 'a', at, top), b: heightOver(ground, 'b', at, top) }]
  }
  return [
    ...placed.stations.flatMap(({ at, index }) => seen(at, { station: index }, topAt(at))),
    ...posts.flatMap((post, index) => seen(post.at, { post: index }, tops.postTops[index] ?? topAt(post.at))),
    ...notebook.line.limits.flatMap(({ from, to }, index) =>
      [from, to].flatMap((typed) => {
        if (typed === '') return []
        const at = lowestTerms(lengthOf(typed))
        return seen(at, { limit: index }, topAt(at))
      }),
    ),
  ].sort((left, right) => compareLengths(left.at, right.at))
}

function heightOver(ground: Ground, side: Household, at: Millimetres, top: Millimetres): Millimetres {
  return lowestTerms(subtractRatios(top, ground.of(side, at)))
}

/** The top of the fence anywhere: along the bays where they are laid out, else as the section's height is agreed. */
function topsAlong(
  placed: PlacedLine,
  posts: readonly Post[],
  { bays }: FenceTops,
  ground: Ground,
): (at: Millimetres) => Millimetres | undefined {
  const laid = bays
    .flatMap((bay) => {
      const [from, to] = [posts[bay.left]?.at, posts[bay.right]?.at]
      return from && to && bay.top ? [{ bay, from, to, top: bay.top }] : []
    })
    .sort((left, right) => compareLengths(left.from, right.from))
  return (at) => {
    // The last bay that begins at or before the place, and its neighbour where the place is the post between them.
    let [low, high] = [0, laid.length]
    while (low < high) {
      const middle = (low + high) >> 1
      if (compareLengths(laid[middle]?.from ?? at, at) <= 0) low = middle + 1
      else high = middle
    }
    const found = [laid[low - 2], laid[low - 1]]
      .filter((one) => one !== undefined)
      .filter(({ from, to }) => compareLengths(from, at) <= 0 && compareLengths(at, to) <= 0)
      .map(({ top, from, to }) => along(top, from, to, at))
    if (found.length > 0) return found.reduce(larger)
    return agreedTop(placed.sections, ground, at)
  }
}

function along(
  top: NonNullable<Bay['top']>,
  from: Millimetres,
  to: Millimetres,
  at: Millimetres,
): Millimetres {
  const part = divideRatios(subtractRatios(at, from), subtractRatios(to, from))
  return lowestTerms(addRatios(top.left, multiplyRatios(part, subtractRatios(top.right, top.left))))
}

function agreedTop(
  sections: readonly PlacedSection[],
  ground: Ground,
  at: Millimetres,
): Millimetres | undefined {
  return sections
    .filter(({ from, to }) => compareLengths(from, at) <= 0 && compareLengths(at, to) <= 0)
    .flatMap(({ section }) => topOver(section, ground, at) ?? [])
    .reduce<Millimetres | undefined>((best, top) => (best === undefined ? top : larger(best, top)), undefined)
}

function topOver({ height }: Section, ground: Ground, at: Millimetres): Millimetres | undefined {
  if (height.agreed === '') return undefined
  return lowestTerms(addRatios(ground.measured(height.measuredFrom, at), lengthOf(height.agreed)))
}

/** One limit that somebody named, held against the highest place of its stretch. */
export type LimitHeld = {
  /** Place in `line.limits`. */
  readonly index: number
  /** Whose ground it is measured from. */
  readonly from: Household | 'higher' | 'lower'
  readonly limit: Millimetres
  /** Where the fence is highest over that ground, and how high. */
  readonly at: Millimetres
  readonly height: Millimetres
  readonly over: boolean
}

/** Holds the heights against the limits that the households entered; a limit in whose stretch nothing stands is left out. */
export function holdLimits(
  notebook: Notebook,
  seen: readonly HeightSeen[],
  found: Found,
): readonly LimitHeld[] {
  return notebook.line.limits.flatMap((limit, index) => {
    const path = `line.limits[${index}]`
    const most = aboveZero(limit.limit, `${path}.limit`, found)
    if (limit.limit === '') found(`${path}.limit`, { kind: 'missing' })
    const [start, end] = [limit.from, limit.to].map((typed) => (typed === '' ? undefined : lengthOf(typed)))
    if (start && end && compareLengths(start, end) > 0)
      found(path, { kind: 'section-backwards', from: start, to: end })
    if (most === undefined) return []
    const inZone = seen.filter(
      ({ at }) => !(start && compareLengths(at, start) < 0) && !(end && compareLengths(end, at) < 0),
    )
    const grounds = limit.measuredFrom === '' ? households : [limit.measuredFrom]
    return grounds.flatMap((from): LimitHeld[] => {
      const worst = highest(inZone, from)
      if (worst === undefined) return []
      const over = compareLengths(worst.height, most) > 0
      if (over) found(path, { kind: 'over-limit', ...worst, from, limit: most, saidBy: limit.saidBy })
      return [{ index, from, limit: most, ...worst, over }]
    })
  })
}

type Place = { readonly at: Millimetres; readonly height: Millimetres }

/** The first of the highest places. */
function highest(seen: readonly HeightSeen[], from: LimitHeld['from']): Place | undefined {
  let best: Place | undefined
  for (const one of seen) {
    const height = heightFrom(one, from)
    if (best === undefined || compareLengths(height, best.height) > 0) best = { at: one.at, height }
  }
  return best
}

function heightFrom(seen: HeightSeen, from: LimitHeld['from']): Millimetres {
  if (from === 'a' || from === 'b') return seen[from]
  // The top over the higher ground is the lesser of the two heights.
  return (from === 'higher' ? smaller : larger)(seen.a, seen.b)
}
