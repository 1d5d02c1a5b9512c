import type { Station } from '../core/agreement/notebook.ts'
import { inMillimetres, lengthOf } from '../core/amounts/length.ts'
import { setbackPoints } from '../core/boundary/setbackAlong.ts'
import type { Household } from '../core/people/household.ts'

/** A height or a setback along the line, in millimetres, in order of the place. */
export type Profile = readonly { readonly at: number; readonly value: number }[]

/** Above zero on household a's land. */
export function setbackProfile(stations: readonly Station[]): Profile {
  return setbackPoints(stations).map(({ at, setback }) => ({
    at: inMillimetres(at),
    value: inMillimetres(setback),
  }))
}

/** Ground heights as typed at the stations, for one household's side or under the fence. */
export function gradeProfile(stations: readonly Station[], side: Household | 'fence'): Profile {
  const key = side === 'fence' ? 'gradeFence' : side === 'a' ? 'gradeA' : 'gradeB'
  return stations
    .flatMap((station) =>
      station.at === '' || station[key] === ''
        ? []
        : [{ at: inMillimetres(lengthOf(station.at)), value: inMillimetres(lengthOf(station[key])) }],
    )
    .sort((left, right) => left.at - right.at)
}

/** The three ground profiles that the stations say. */
export function gradesOf(stations: readonly Station[]): {
  readonly a: Profile
  readonly b: Profile
  readonly fence: Profile
} {
  return {
    a: gradeProfile(stations, 'a'),
    b: gradeProfile(stations, 'b'),
    fence: gradeProfile(stations, 'fence'),
  }
}

/** Straight between two points, level before the first and after the last; 0 where there are none. */
export function valueAt(profile: Profile, at: number): number {
  const next = profile.findIndex((point) => point.at >= at)
  const [before, after] = [profile[next < 0 ? profile.length - 1 : next - 1], profile[next]]
  if (after === undefined) return before?.value ?? 0
  if (before === undefined || after.at === before.at) return after.value
  return before.value + ((after.value - before.value) * (at - before.at)) / (after.at - before.at)
}

/** The ends of a stretch and every place between them where a profile bends. */
export function bendsWithin(profiles: readonly Profile[], from: number, to: number): readonly number[] {
  const bends = profiles
    .flatMap((profile) => profile.map(({ at }) => at))
    .filter((at) => at > from && at < to)
  return [from, ...[...new Set(bends)].sort((left, right) => left - right), to]
}
