import type { Station } from '../agreement/notebook.ts'
import { compareLengths, lengthOf, type Millimetres } from '../amounts/length.ts'
import { addRatios, multiplyRatios, ratio } from '../amounts/ratio.ts'

/** Setback at a place of the line, exact: above zero on household a's land, below zero on b's, zero on the line. */
export type SetbackPoint = { readonly at: Millimetres; readonly setback: Millimetres }

/** What the stations say about the setback along one stretch. */
export type SetbackAlong = {
  readonly least: Millimetres
  readonly most: Millimetres
  /** False where the stretch reaches past the stations: nothing is said about that part. */
  readonly whole: boolean
}

/** The stations that say where the fence stands, in order along the line. */
export function setbackPoints(stations: readonly Station[]): readonly SetbackPoint[] {
  return stations
    .flatMap((station) => {
      const setback = signedSetback(station)
      return station.at === '' || setback === undefined ? [] : [{ at: lengthOf(station.at), setback }]
    })
    .sort((left, right) => compareLengths(left.at, right.at))
}

/** Undefined where the station does not say; a distance of zero needs no side. */
function signedSetback({ setback }: Station): Millimetres | undefined {
  if (setback === undefined || setback.distance === '') return undefined
  const distance = lengthOf(setback.distance)
  if (distance.over === 0n) return distance
  if (setback.side === '') return undefined
  return setback.side === 'a' ? distance : ratio(-distance.over, distance.under)
}

/**
 * Between two stations the fence runs straight, so the setback changes evenly: linear interpolation, never past the
 * first or the last station. Undefined where no station lies close enough to say anything.
 */
export function setbackAlong(
  stations: readonly Station[],
  from: Millimetres,
  to: Millimetres,
): SetbackAlong | undefined {
  const points = setbackPoints(stations)
  const ends = [setbackAt(points, from), setbackAt(points, to)]
  const within = points.filter(({ at }) => compareLengths(at, from) >= 0 && compareLengths(at, to) <= 0)
  const found = [...ends.filter((end) => end !== undefined), ...within.map(({ setback }) => setback)]
  const [first, ...rest] = found
  if (first === undefined) return undefined
  return {
    least: rest.reduce((least, one) => (compareLengths(one, least) < 0 ? one : least), first),
    most: rest.reduce((most, one) => (compareLengths(one, most) > 0 ? one : most), first),
    whole: ends.every((end) => end !== undefined),
  }
}

/** The setback at one place, exact; undefined before the first and after the last station that says one. */
export function setbackAt(points: readonly SetbackPoint[], at: Millimetres): Millimetres | undefined {
  const here = points.find((point) => compareLengths(point.at, at) === 0)
  if (here !== undefined) return here.setback
  const next = points.findIndex((point) => compareLengths(point.at, at) > 0)
  const [before, after] = [points[next - 1], points[next]]
  if (before === undefined || after === undefined) return undefined
  const run = subtract(after.at, before.at)
  const part = subtract(at, before.at)
  const fraction = ratio(part.over * run.under, part.under * run.over)
  return addRatios(before.setback, multiplyRatios(subtract(after.setback, before.setback), fraction))
}

function subtract(left: Millimetres, right: Millimetres): Millimetres {
  return addRatios(left, ratio(-right.over, right.under))
}
