import type { Nanometres } from './cutRequest.ts'
import type { CuttingProblem, Item } from './cuttingProblem.ts'
import { type Packing, unplacedCounts } from './packing.ts'

/**
 * A length below which no plan that leaves out as much as this one buys: what must be placed less what is there already,
 * as whole lengths of what is bought; and where all lengths are alike, the bound L2 on how many it takes.
 */
export function lowerBoundOnBought(problem: CuttingProblem, packing: Packing): Nanometres {
  const left = unplacedCounts(problem, packing)
  const everything = left.every((count) => count === 0)
  const [only, ...others] = problem.bins
  const bound = everything ? sizeBound(problem) : lengthBound(problem, left)
  if (!everything || !only?.bought || others.length > 0) return bound
  return Math.max(bound, lengthsBound(problem.items, only.capacity) * only.length)
}

/** Everything is placed, each piece with its kerf. */
function sizeBound(problem: CuttingProblem): Nanometres {
  const needed = problem.items.reduce((sum, { size, demand }) => sum + size * demand, 0)
  const there = sumThere(problem, 'capacity')
  const kinds = problem.bins.filter(({ bought }) => bought)
  if (kinds.length === 0 || needed <= there) return 0
  const each = kinds.reduce((divisor, { length }) => greatestCommonDivisor(divisor, length), 0)
  const least = Math.min(...kinds.map(({ length, capacity }) => length / capacity))
  // A hair of floating point must not make the bound pass what is possible.
  return Math.ceil((((needed - there) * least) / each) * (1 - 1e-12)) * each
}

/** Some pieces are left out, and which ones may differ from plan to plan: only their length without kerfs is certain. */
function lengthBound(problem: CuttingProblem, left: readonly number[]): Nanometres {
  const placed = problem.items.reduce(
    (sum, { length, demand }, item) => sum + length * (demand - (left[item] ?? 0)),
    0,
  )
  return Math.max(0, placed - sumThere(problem, 'length'))
}

function sumThere(problem: CuttingProblem, what: 'length' | 'capacity'): number {
  return problem.bins.reduce((sum, bin) => sum + (bin.bought ? 0 : bin[what] * bin.count), 0)
}

export function greatestCommonDivisor(left: number, right: number): number {
  let [larger, smaller] = [left, right]
  while (smaller !== 0) [larger, smaller] = [smaller, larger % smaller]
  return larger
}

/**
 * How many lengths of one capacity the items take at least: the bound L2 of Martello and Toth, Knapsack Problems (1990),
 * section 8.3.2. Items above half a capacity share none with each other; what is left beside them is all that smaller
 * ones from a threshold up can use.
 *
 * @param items longest first, none larger than the capacity
 */
export function lengthsBound(items: readonly Item[], capacity: Nanometres): number {
  const half = capacity / 2
  const large = items.filter(({ size }) => size > half)
  const small = items.filter(({ size }) => size <= half)
  const largeCount = large.reduce((sum, { demand }) => sum + demand, 0)
  const thresholds = [0, ...small.map(({ size }) => size)]
  let best = 0
  for (const threshold of thresholds) {
    let room = 0
    for (const { size, demand } of large) if (size <= capacity - threshold) room += (capacity - size) * demand
    let needed = 0
    for (const { size, demand } of small) if (size >= threshold) needed += size * demand
    best = Math.max(best, largeCount + Math.max(0, Math.ceil((needed - room) / capacity)))
  }
  return best
}
