import type { Highs } from 'highs'
import type { CuttingProblem } from './cuttingProblem.ts'
import { byWorth, mostValuableFill, searchFills, takesOf } from './fill.ts'
import { frameOf, packingOf } from './goal.ts'
import { betterPacking, cutsOf, type Packing, type Pattern, standingOf, unplacedCounts } from './packing.ts'
import { type Column, solveIntegers } from './solver.ts'

export type FewestCuts = { readonly packing: Packing; readonly proven: boolean }

const mostPatterns = 600
const stepsToFindThem = 1_000_000
const nodesOfSearch = 30

/**
 * Among the plans that leave out no more and buy no more than the one at hand: the one of fewest cuts, then fewest
 * lengths, then least length. A cut is saved only where pieces use a length up to its end, so it takes all patterns, also
 * those that are not full; where they are too many, the plan stays as it is.
 */
export function fewestCuts(highs: Highs, problem: CuttingProblem, start: Packing): FewestCuts {
  const settled = mustCutForEveryPiece(problem, start)
  const patterns = settled && problem.bins.length === 1 ? undefined : everyPattern(problem)
  if (patterns === undefined) return { packing: start, proven: settled }
  const cuts = (pattern: Pattern) => cutsOf(problem, pattern)
  const cut = settled ? { packing: start, ended: true } : search(highs, problem, patterns, start, cuts, 1)
  // With one kind of stock, what is bought says how many lengths there are.
  if (problem.bins.length === 1) return { packing: cut.packing, proven: cut.ended }
  const longest = Math.max(...problem.bins.map(({ length }) => length))
  const most = standingOf(problem, cut.packing).lengths + 1
  const weight = ({ bin }: Pattern) => 1 + (problem.bins[bin]?.length ?? 0) / longest / most
  const { packing } = search(highs, problem, patterns, cut.packing, weight, 1e-6)
  return { packing, proven: cut.ended }
}

/** The least sum of weights among the plans that stand no worse in what comes before. */
function search(
  highs: Highs,
  problem: CuttingProblem,
  patterns: readonly Pattern[],
  start: Packing,
  weight: (pattern: Pattern) => number,
  step: number,
): { readonly packing: Packing; readonly ended: boolean } {
  const standing = standingOf(problem, start)
  const frame = frameOf(problem, standing.unplacedLength, true)
  const longest = Math.max(...problem.bins.map(({ length }) => length))
  const [boughtRow, cutsRow] = [frame.rows.length, frame.rows.length + 1]
  const columns: Column[] = patterns.map((pattern) => {
    const column = frame.columnOf(pattern, weight(pattern))
    const bin = problem.bins[pattern.bin]
    const entries = [...column.entries, { row: cutsRow, value: cutsOf(problem, pattern) }]
    if (bin?.bought) entries.push({ row: boughtRow, value: bin.length / longest })
    return { ...column, entries: entries.filter(({ value }) => value !== 0) }
  })
  const none = problem.items.map(() => 0)
  const rows = [
    ...frame.rows,
    { lower: 0, upper: standing.boughtLength / longest + 1e-9 },
    { lower: 0, upper: standing.cuts },
  ]
  const limits = { tolerance: step / 2, nodes: nodesOfSearch }
  const whole = solveIntegers(highs, rows, [...columns, ...frame.unplacedColumns(none)], limits)
  if (whole.values === undefined) return { packing: start, ended: false }
  const packing = betterPacking(problem, start, packingOf(problem, patterns, whole.values))
  return { packing, ended: whole.outcome === 'optimal' }
}

function everyPattern(problem: CuttingProblem): Pattern[] | undefined {
  const patterns: Pattern[] = []
  const budget = { steps: stepsToFindThem }
  for (const [bin, { capacity }] of problem.bins.entries()) {
    const candidates = byWorth(
      problem.items.map(({ size, demand }, item) => ({ item, size, value: size, limit: demand })),
    )
    const complete = searchFills(
      capacity,
      candidates,
      () => (patterns.length > mostPatterns ? Number.POSITIVE_INFINITY : 0),
      (counts) => patterns.push({ bin, takes: takesOf(candidates, counts) }),
      budget,
    )
    if (!complete || patterns.length > mostPatterns) return undefined
  }
  return patterns
}

/** Whether no plan at all can have fewer cuts: as many as pieces, and no pieces that use up a length to its end. */
export function mustCutForEveryPiece(problem: CuttingProblem, packing: Packing): boolean {
  const left = unplacedCounts(problem, packing)
  if (left.some((count) => count > 0)) return false
  const budget = { steps: stepsToFindThem }
  return problem.bins.every(({ capacity }) => {
    const candidates = problem.items.map(({ size, demand }, item) => ({
      item,
      size,
      value: size,
      limit: demand,
    }))
    const { value, complete } = mostValuableFill(capacity, candidates, budget)
    return complete && value < capacity
  })
}
