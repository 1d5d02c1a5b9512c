import { compareLengths, type Millimetres } from '../amounts/length.ts'
import type { ForBoth } from '../people/household.ts'
import { larger } from './exact.ts'
import type { HeightSeen } from './heightsSeen.ts'

/** How high a stretch of the fence is at most as each household sees it; undefined where nothing stands there. */
export function highestSeen(
  heights: readonly HeightSeen[],
  from: Millimetres,
  to: Millimetres,
): ForBoth<Millimetres> | undefined {
  const [first, ...rest] = heights.filter(
    ({ at }) => compareLengths(from, at) <= 0 && compareLengths(at, to) <= 0,
  )
  if (first === undefined) return undefined
  return rest.reduce<ForBoth<Millimetres>>(
    (most, seen) => ({ a: larger(most.a, seen.a), b: larger(most.b, seen.b) }),
    { a: first.a, b: first.b },
  )
}
