import type { Highs } from 'highs'
import { columnGeneration, pricedCandidates, type Relaxed } from './columnGeneration.ts'
import type { CuttingProblem } from './cuttingProblem.ts'
import { dive, diveStyles } from './dive.ts'
import { byWorth, searchFills, takesOf } from './fill.ts'
import { costOf, frameOf, type Goal, packingOf, roundedUp, scaleOf } from './goal.ts'
import { betterPacking, type Packing, type Pattern, unplacedCounts } from './packing.ts'
import { solveIntegers } from './solver.ts'

export type LeastCost = {
  readonly packing: Packing
  /** No plan costs less than this. */
  readonly lowerBound: number
}

const relaxing = { rounds: 600, steps: 20_000_000 }
const nodesOfFirstSearch = 10
/** How far a search among all worthwhile patterns goes, for the whole task and for the last few pieces of a dive. */
const wholeTask = { nodes: 100, patterns: 1_500, steps: 2_000_000 }
const lastPieces = { nodes: 10, patterns: 200, steps: 200_000 }

/**
 * The plan of least cost, from one that is known. Cutting patterns are brought in as the linear relaxation asks for them;
 * whole numbers are sought by fixing the clearest patterns one after the other, then among all that were brought in. Where
 * that does not meet the bound, they are sought among all patterns that a better plan can contain at all: those whose
 * reduced cost is below what is to be gained. If that search comes to its end, the plan is the least one.
 */
export function leastCost(
  highs: Highs,
  problem: CuttingProblem,
  goal: Goal,
  start: Packing,
  reach = wholeTask,
): LeastCost {
  const finish = (rest: CuttingProblem, known: Packing) =>
    leastCost(highs, rest, goal, known, lastPieces).packing
  const first = columnGeneration(highs, problem, goal, start, { ...relaxing, boundOnly: true })
  if (first === undefined) return { packing: start, lowerBound: 0 }
  const lowerBound = first.bound === undefined ? 0 : roundedUp(first.bound, goal.each)
  let best = { packing: start, cost: costOf(goal, start, unplacedCounts(problem, start)) }
  const offer = (packing: Packing | undefined) => {
    if (packing === undefined) return
    const cost = costOf(goal, packing, unplacedCounts(problem, packing))
    if (cost < best.cost) best = { packing, cost }
    else if (cost === best.cost) best = { packing: betterPacking(problem, best.packing, packing), cost }
  }
  const diveFrom = (relaxed: Relaxed) => {
    for (const style of reach === wholeTask ? diveStyles : []) {
      if (best.cost > lowerBound) offer(dive(highs, problem, goal, relaxed, style, finish))
    }
  }
  diveFrom(first)
  if (best.cost <= lowerBound) return { packing: best.packing, lowerBound }
  const relaxed = columnGeneration(highs, problem, goal, first.patterns, { ...relaxing, boundOnly: false })
  if (relaxed === undefined) return { packing: best.packing, lowerBound }
  diveFrom(relaxed)
  if (best.cost > lowerBound) {
    offer(searchWhole(highs, problem, goal, relaxed.patterns, best.cost, nodesOfFirstSearch).packing)
  }
  while (best.cost > lowerBound && relaxed.bound !== undefined) {
    const patterns = patternsWorthwhile(problem, goal, relaxed, relaxed.bound, best.cost, reach)
    if (patterns === undefined) break
    const found = searchWhole(highs, problem, goal, patterns, best.cost, reach.nodes)
    const before = best.cost
    offer(found.packing)
    if (found.ended) return { packing: best.packing, lowerBound: best.cost }
    if (best.cost === before) break
  }
  return { packing: best.packing, lowerBound: Math.min(lowerBound, best.cost) }
}

/** The best whole plan of these patterns that costs less than `cost`. `ended`: there is none better among them. */
function searchWhole(
  highs: Highs,
  problem: CuttingProblem,
  goal: Goal,
  patterns: readonly Pattern[],
  cost: number,
  nodes: number,
): { readonly ended: boolean; readonly packing?: Packing } {
  const frame = frameOf(problem, goal.unplacedAtMost, false)
  const scale = scaleOf(goal)
  const step = goal.each / scale
  const costRow = frame.rows.length
  const columns = [
    ...patterns.map((pattern) => frame.columnOf(pattern, (goal.binCosts[pattern.bin] ?? 0) / scale)),
    ...frame.unplacedColumns(goal.unplacedCosts.map((each) => each / scale)),
  ].map((column) =>
    column.cost === 0
      ? column
      : { ...column, entries: [...column.entries, { row: costRow, value: column.cost }] },
  )
  const rows = [...frame.rows, { lower: 0, upper: cost / scale - step / 2 }]
  const { outcome, values } = solveIntegers(highs, rows, columns, { tolerance: step / 2, nodes })
  if (values === undefined) return { ended: outcome === 'none' }
  return { ended: outcome === 'optimal', packing: packingOf(problem, patterns, values) }
}

/**
 * All full patterns that a plan cheaper than `cost` can contain: what a plan costs above the relaxation is the sum of its
 * patterns' reduced costs, so none of them can have more than the whole difference. Undefined where they are too many.
 */
function patternsWorthwhile(
  problem: CuttingProblem,
  goal: Goal,
  prices: Pick<Relaxed, 'itemPrices' | 'binPrices'>,
  bound: number,
  cost: number,
  reach: typeof wholeTask,
): Pattern[] | undefined {
  const scale = scaleOf(goal)
  const gain = (cost - goal.each - bound) / scale + 1e-6
  const patterns: Pattern[] = []
  const budget = { steps: reach.steps }
  for (const [bin, { capacity }] of problem.bins.entries()) {
    const candidates = byWorth(pricedCandidates(problem, prices.itemPrices, capacity))
    const least = (goal.binCosts[bin] ?? 0) / scale - (prices.binPrices[bin] ?? 0) - gain
    const complete = searchFills(
      capacity,
      candidates,
      () => (patterns.length > reach.patterns ? Number.POSITIVE_INFINITY : least),
      (counts, _value, rest) => {
        // One that still has room for a piece is part of a full one that is worth no less.
        const full = candidates.every(({ size, limit }, at) => size > rest || (counts[at] ?? 0) >= limit)
        if (full) patterns.push({ bin, takes: takesOf(candidates, counts) })
      },
      budget,
    )
    if (!complete || patterns.length > reach.patterns) return undefined
  }
  return patterns
}
