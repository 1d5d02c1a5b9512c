import type { Notebook } from '../agreement/notebook.ts'
import { compareLengths, type Millimetres } from '../amounts/length.ts'
import { addRatios, multiplyRatios, type Ratio } from '../amounts/ratio.ts'
import { type SetbackPoint, setbackAt, setbackPoints } from '../boundary/setbackAlong.ts'
import type { ForBoth, Household } from '../people/household.ts'
import {
  divideRatios,
  halved,
  larger,
  lowestTerms,
  negative,
  nothing,
  sizeOf,
  smaller,
  subtractRatios,
} from './exact.ts'
import type { Ground } from './ground.ts'
import { lengthOrNothing } from './neededLength.ts'
import type { BuiltPost } from './sectionParts.ts'

/**
 * Strips of land between the line and the fence, exact, in mm²: `a` is land of household a that ends up on the other
 * side, because the fence stands on it.
 */
export type Strips = ForBoth<Ratio>

/**
 * Trapezoids under the setbacks between the stations that say one, within a stretch; where the fence crosses the line
 * between two stations, a triangle for each household. Distances are along the line: at a turn of the line the little
 * that the corners add or take is left out.
 */
export function stripsOf(points: readonly SetbackPoint[], from: Millimetres, to: Millimetres): Strips {
  const first = points[0]
  const last = points.at(-1)
  if (!first || !last) return { a: nothing, b: nothing }
  const [start, end] = [larger(from, first.at), smaller(to, last.at)]
  if (compareLengths(start, end) >= 0) return { a: nothing, b: nothing }
  const within = points.filter(({ at }) => compareLengths(start, at) < 0 && compareLengths(at, end) < 0)
  const ends = [start, end].map((at) => ({ at, setback: setbackAt(points, at) ?? nothing }))
  const places = [ends[0], ...within, ends[1]].filter((point) => point !== undefined)
  let [a, b] = [nothing, nothing]
  for (const [index, right] of places.slice(1).entries()) {
    const left = places[index]
    if (left === undefined) continue
    const area = between(left, right)
    a = lowestTerms(addRatios(a, area.a))
    b = lowestTerms(addRatios(b, area.b))
  }
  return { a, b }
}

function between(left: SetbackPoint, right: SetbackPoint): Strips {
  const run = subtractRatios(right.at, left.at)
  if (left.setback.over < 0n || right.setback.over < 0n) {
    if (left.setback.over <= 0n && right.setback.over <= 0n)
      return { a: nothing, b: trapezoid(run, negative(left.setback), negative(right.setback)) }
    // The fence crosses the line: each part is a triangle.
    const whole = subtractRatios(right.setback, left.setback)
    const leftRun = multiplyRatios(run, divideRatios(negative(left.setback), whole))
    const leftArea = trapezoid(leftRun, sizeOf(left.setback), nothing)
    const rightArea = trapezoid(subtractRatios(run, leftRun), sizeOf(right.setback), nothing)
    return left.setback.over > 0n ? { a: leftArea, b: rightArea } : { a: rightArea, b: leftArea }
  }
  return { a: trapezoid(run, left.setback, right.setback), b: nothing }
}

function trapezoid(run: Ratio, left: Ratio, right: Ratio): Ratio {
  return lowestTerms(halved(multiplyRatios(run, addRatios(left, right))))
}

export type Answer = 'yes' | 'no' | 'cannot tell'

/** How one post and its hole lie to the line. */
export type PostSetback = {
  /** Above zero on household a's land; undefined where the stations do not say. */
  readonly setback: Millimetres | undefined
  /** On whose land the post's centre stands. */
  readonly standsOn: Household | 'line' | 'cannot tell'
  /** Radius of the hole, or half the post where there is none. */
  readonly reach: Millimetres
  readonly crosses: Answer
}

/** The stated error of the line's position; nothing where none is stated. */
export function statedError(notebook: Notebook): Millimetres {
  return lengthOrNothing(notebook.line.error)
}

/**
 * Whether a hole of a radius reaches across the line: for certain where it does wherever the line may lie, not where it
 * does nowhere, and else it can't be told.
 */
export function reachesAcross(
  setback: Millimetres | undefined,
  radius: Millimetres,
  error: Millimetres,
): Answer {
  if (setback === undefined) return 'cannot tell'
  const distance = sizeOf(setback)
  if (compareLengths(radius, addRatios(distance, error)) > 0) return 'yes'
  return compareLengths(radius, subtractRatios(distance, error)) <= 0 ? 'no' : 'cannot tell'
}

export function postSetbacks(
  notebook: Notebook,
  posts: readonly BuiltPost[],
  ground: Ground,
): readonly PostSetback[] {
  const error = statedError(notebook)
  const reaches = new Map<BuiltPost['size'], Millimetres>()
  return posts.map(({ post, size }) => {
    const setback = ground.setback(post.at)
    const reach = reaches.get(size) ?? lowestTerms(halved(larger(size.hole, size.outside)))
    reaches.set(size, reach)
    return {
      setback,
      standsOn: standsOn(setback, error),
      reach,
      crosses: reachesAcross(setback, reach, error),
    }
  })
}

function standsOn(setback: Millimetres | undefined, error: Millimetres): PostSetback['standsOn'] {
  if (setback === undefined) return 'cannot tell'
  if (setback.over === 0n && error.over === 0n) return 'line'
  if (compareLengths(sizeOf(setback), error) <= 0) return 'cannot tell'
  return setback.over > 0n ? 'a' : 'b'
}

/** Strips over the whole line, from the first to the last station that says a setback. */
export function stripsOfLine(notebook: Notebook): Strips {
  const points = setbackPoints(notebook.line.stations)
  const [first, last] = [points[0], points.at(-1)]
  return first && last ? stripsOf(points, first.at, last.at) : { a: nothing, b: nothing }
}
