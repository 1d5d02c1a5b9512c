import type { MeasuredFrom, Station } from '../agreement/notebook.ts'
import { compareLengths, lengthOf, type Millimetres } from '../amounts/length.ts'
import { addRatios, multiplyRatios } from '../amounts/ratio.ts'
import { setbackPoints } from '../boundary/setbackAlong.ts'
import type { ForBoth, Household } from '../people/household.ts'
import { divideRatios, halved, larger, lowestTerms, nothing, smaller, subtractRatios } from './exact.ts'

/** A value at each of some places, in order along the line, straight between them; all exact. */
export type Profile = readonly ProfilePoint[]
type ProfilePoint = { readonly at: Millimetres; readonly value: Millimetres; readonly perLength: Millimetres }

/** Where the ground of one side is written down: as whose, and from which station to which. */
export type GroundSaid = {
  readonly by: Household | 'fence'
  readonly from: Millimetres
  readonly to: Millimetres
}

/** Ground heights above one datum, and the setback, at any place of the line. */
export type Ground = {
  readonly of: (side: Household, at: Millimetres) => Millimetres
  /** Under the fence. */
  readonly fence: (at: Millimetres) => Millimetres
  /** Of the ground that a height is measured from; not said is the higher. */
  readonly measured: (from: MeasuredFrom, at: Millimetres) => Millimetres
  /** Above zero on household a's land; undefined past the stations that say one. */
  readonly setback: (at: Millimetres) => Millimetres | undefined
  /** What `of` rests on; undefined where no station says any ground. Past it the ground is taken as level. */
  readonly said: ForBoth<GroundSaid | undefined>
}

/**
 * Where one side's ground is not said, the other's stands in for it; the fence stands between the two where nothing is
 * said of it. Level before the first station and after the last, and level everywhere where no station says a height.
 */
export function groundOf(stations: readonly Station[]): Ground {
  const placed = stations.flatMap((station) =>
    station.at === '' ? [] : [{ station, at: lowestTerms(lengthOf(station.at)) }],
  )
  const said = {
    a: profileOf(placed, 'gradeA'),
    b: profileOf(placed, 'gradeB'),
    fence: profileOf(placed, 'gradeFence'),
  }
  const firstSaid = (...grounds: readonly (Household | 'fence')[]) =>
    grounds.find((ground) => said[ground].length > 0)
  const sides = { a: firstSaid('a', 'fence', 'b'), b: firstSaid('b', 'fence', 'a') }
  const profile = (by: Household | 'fence' | undefined) => (by === undefined ? [] : said[by])
  const a = remembered(valueAlong(profile(sides.a)))
  const b = remembered(valueAlong(profile(sides.b)))
  const of = (side: Household, at: Millimetres) => (side === 'a' ? a : b)(at)
  const setbacks = withSlopes(
    setbackPoints(stations).map(({ at, setback }) => ({ at: lowestTerms(at), value: lowestTerms(setback) })),
  )
  const [fence, setbackAt] = [valueAlong(said.fence), valueAlong(setbacks)]
  return {
    of,
    fence: remembered((at) =>
      said.fence.length > 0 ? fence(at) : lowestTerms(halved(addRatios(of('a', at), of('b', at)))),
    ),
    measured: (from, at) => {
      if (from === 'a' || from === 'b') return of(from, at)
      return (from === 'lower' ? smaller : larger)(of('a', at), of('b', at))
    },
    setback: (at) => {
      const [first, last] = [setbacks[0], setbacks.at(-1)]
      if (!first || !last || compareLengths(at, first.at) < 0 || compareLengths(at, last.at) > 0)
        return undefined
      return setbackAt(at)
    },
    said: { a: extentOf(sides.a, profile(sides.a)), b: extentOf(sides.b, profile(sides.b)) },
  }
}

function extentOf(by: GroundSaid['by'] | undefined, profile: Profile): GroundSaid | undefined {
  const [first, last] = [profile[0], profile.at(-1)]
  return by === undefined || !first || !last ? undefined : { by, from: first.at, to: last.at }
}

/** The same place is asked for again and again: for the post, its height, its limits. */
function remembered(worked: (at: Millimetres) => Millimetres): (at: Millimetres) => Millimetres {
  const known = new Map<Millimetres, Millimetres>()
  return (at) => {
    const value = known.get(at) ?? worked(at)
    known.set(at, value)
    return value
  }
}

type PlacedStation = { readonly station: Station; readonly at: Millimetres }

function profileOf(placed: readonly PlacedStation[], key: 'gradeA' | 'gradeB' | 'gradeFence'): Profile {
  return withSlopes(
    placed.flatMap(({ station, at }) =>
      station[key] === '' ? [] : [{ at, value: lowestTerms(lengthOf(station[key])) }],
    ),
  )
}

function withSlopes(points: readonly { at: Millimetres; value: Millimetres }[]): Profile {
  const sorted = [...points].sort((left, right) => compareLengths(left.at, right.at))
  return sorted.map(({ at, value }, index) => {
    const next = sorted[index + 1]
    const level = next === undefined || compareLengths(next.at, at) === 0
    return {
      at,
      value,
      perLength: level
        ? nothing
        : lowestTerms(divideRatios(subtractRatios(next.value, value), subtractRatios(next.at, at))),
    }
  })
}

/**
 * The value at any place: straight between two points, level before the first and after the last; nothing where there are
 * none. Places are asked for along the line, so the last stretch is looked at first.
 */
function valueAlong(profile: Profile): (at: Millimetres) => Millimetres {
  let last = 0
  return (at) => {
    if (!within(profile, last, at)) last = lastAtOrBefore(profile, at)
    const before = profile[last]
    if (before === undefined) return profile[0]?.value ?? nothing
    if (before.perLength.over === 0n) return before.value
    return lowestTerms(
      addRatios(before.value, multiplyRatios(before.perLength, subtractRatios(at, before.at))),
    )
  }
}

function within(profile: Profile, index: number, at: Millimetres): boolean {
  const [here, next] = [profile[index], profile[index + 1]]
  if (here === undefined || compareLengths(here.at, at) > 0) return false
  return next === undefined || compareLengths(at, next.at) < 0
}

/** Index of the last point at or before a place, by halving; −1 before the first. */
function lastAtOrBefore(profile: Profile, at: Millimetres): number {
  let [low, high] = [0, profile.length]
  while (low < high) {
    const middle = (low + high) >> 1
    if (compareLengths(profile[middle]?.at ?? at, at) <= 0) low = middle + 1
    else high = middle
  }
  return low - 1
}
