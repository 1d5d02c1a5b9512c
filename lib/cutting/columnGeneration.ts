import type { Highs } from 'highs'
import type { CuttingProblem } from './cuttingProblem.ts'
import { type Budget, type Candidate, mostValuableFill } from './fill.ts'
import { frameOf, type Goal, roundedUp, scaleOf } from './goal.ts'
import type { Pattern, Takes } from './packing.ts'
import { modelData } from './solver.ts'

export type Relaxed = {
  /** No whole plan costs less. Missing where the limits came first. */
  readonly bound?: number
  /** What one more of each item, and one more length of each kind, would change it by, in parts of `scaleOf(goal)`. */
  readonly itemPrices: readonly number[]
  readonly binPrices: readonly number[]
  readonly patterns: readonly Pattern[]
  /** How often each pattern is cut, in fractions. */
  readonly times: readonly number[]
}

/** Counted, so that every machine stops at the same place. */
export type Effort = {
  readonly rounds: number
  readonly steps: number
  /** To stop as soon as it is clear which possible cost the bound comes to, rather than with all patterns and prices. */
  readonly boundOnly: boolean
}

/** The solver's tolerance, and what a pattern must promise at least, in parts of the largest cost. */
const tolerance = 1e-9
const worthwhile = 1e-8

/**
 * The relaxation over all patterns there are, where lengths can be cut by fractions of a time: patterns that lower it are
 * brought in one by one (Gilmore and Gomory 1961).
 *
 * @param start patterns of which a plan can be made; undefined where none can
 */
export function columnGeneration(
  highs: Highs,
  problem: CuttingProblem,
  goal: Goal,
  start: readonly Pattern[],
  effort: Effort,
): Relaxed | undefined {
  const frame = frameOf(problem, goal.unplacedAtMost, false)
  const scale = scaleOf(goal)
  const patterns = [...start]
  const columnOf = (pattern: Pattern) => frame.columnOf(pattern, (goal.binCosts[pattern.bin] ?? 0) / scale)
  const unplaced = frame.unplacedColumns(goal.unplacedCosts.map((cost) => cost / scale))
  const budget = { steps: effort.steps }
  // Each length of a plan may be reckoned dearer than it is by what was not worthwhile; a length holds a piece at least.
  const uncertain = problem.items.reduce((sum, { demand }) => sum + demand, 0) * (worthwhile + tolerance)
  const first = modelData(highs, frame.rows, [...unplaced, ...patterns.map(columnOf)], false)
  return highs.withModel(first, (model) => {
    model.options.set({ output_flag: false, dual_feasibility_tolerance: tolerance })
    for (let round = 1; ; round += 1) {
      model.run()
      if (model.getModelStatus() !== highs.constants.modelStatus.optimal) return undefined
      const { rowDual, colValue } = model.getSolution()
      const itemPrices = problem.items.map((_, item) => Math.max(0, rowDual[item] ?? 0))
      const binPrices = frame.binRows.map((row) => (row === undefined ? 0 : Math.min(0, rowDual[row] ?? 0)))
      const relaxed = { itemPrices, binPrices, times: Array.from(colValue.subarray(unplaced.length)) }
      const priced = worthwhilePatterns(problem, goal, relaxed, budget)
      const early =
        effort.boundOnly && priced.complete ? scaledPrices(problem, goal, relaxed, priced.values) : undefined
      const value = model.getObjectiveValue() * scale
      // The bound can't come above the value, so it comes to no other possible cost any more.
      if (early && roundedUp(early.bound, goal.each) >= roundedUp(value, goal.each)) {
        return { ...relaxed, ...early, patterns }
      }
      if (priced.patterns.length === 0 && priced.complete) {
        return { ...relaxed, patterns, bound: value - uncertain * scale }
      }
      if (round === effort.rounds || !priced.complete) return { ...relaxed, patterns }
      for (const pattern of priced.patterns) {
        const { cost, upper, entries } = columnOf(pattern)
        const indices = entries.map(({ row }) => row)
        model.addCol(cost, 0, upper, { indices, values: entries.map(({ value }) => value) })
        patterns.push(pattern)
      }
    }
  })
}

/** For each kind of length the pattern that promises most, where it promises anything, and what that pattern is worth. */
function worthwhilePatterns(
  problem: CuttingProblem,
  goal: Goal,
  prices: Pick<Relaxed, 'itemPrices' | 'binPrices'>,
  budget: Budget,
): { readonly patterns: readonly Pattern[]; readonly values: readonly number[]; readonly complete: boolean } {
  const patterns: Pattern[] = []
  const values: number[] = []
  for (const [bin, { capacity, count }] of problem.bins.entries()) {
    const candidates = pricedCandidates(problem, prices.itemPrices, capacity)
    const { takes, value, complete } = mostValuableFill(
      capacity,
      candidates.filter(({ value: price }) => price > 0),
      budget,
    )
    values.push(value)
    if (!complete) return { patterns, values, complete }
    const cost = (goal.binCosts[bin] ?? 0) / scaleOf(goal) - (prices.binPrices[bin] ?? 0)
    if (count > 0 && value > cost + worthwhile) {
      patterns.push({ bin, takes: filledUp(problem, capacity, takes) })
    }
  }
  return { patterns, values, complete: true }
}

/**
 * Prices at which no pattern is worth more than it costs, made of the relaxation's own before that has come to its end
 * (Farley 1990, from memory): items are priced down until lengths without limit are not worth more than they cost, and a
 * length of limited number gets the price that its best pattern leaves. What these prices say of the demand is a bound.
 * Undefined where pieces may be left out, which has prices of its own.
 */
function scaledPrices(
  { items, bins }: CuttingProblem,
  goal: Goal,
  { itemPrices }: Pick<Relaxed, 'itemPrices'>,
  values: readonly number[],
): (Pick<Relaxed, 'itemPrices' | 'binPrices'> & { readonly bound: number }) | undefined {
  if (goal.unplacedAtMost !== 0) return undefined
  const scale = scaleOf(goal)
  let down = 1
  for (const [bin, { count }] of bins.entries()) {
    const value = values[bin] ?? 0
    if (count === Number.POSITIVE_INFINITY && value > 0) {
      down = Math.min(down, (goal.binCosts[bin] ?? 0) / scale / value)
    }
  }
  const scaled = itemPrices.map((price) => price * down)
  const binPrices = bins.map(({ count }, bin) =>
    count === Number.POSITIVE_INFINITY
      ? 0
      : Math.min(0, (goal.binCosts[bin] ?? 0) / scale - down * (values[bin] ?? 0)),
  )
  let bound = items.reduce((sum, { demand }, item) => sum + demand * (scaled[item] ?? 0), 0)
  bins.forEach(({ count }, bin) => {
    if (binPrices[bin] !== 0) bound += count * (binPrices[bin] ?? 0)
  })
  return { itemPrices: scaled, binPrices, bound: bound * scale }
}

/** What may go into a length of this capacity, each item at its price. */
export function pricedCandidates(
  problem: CuttingProblem,
  itemPrices: readonly number[],
  capacity: number,
): Candidate[] {
  return problem.items.map(({ size, demand }, item) => ({
    item,
    size,
    value: itemPrices[item] ?? 0,
    limit: Math.min(demand, Math.floor(capacity / size)),
  }))
}

/** Room that is left goes to pieces whose price is nothing at the moment: a full pattern is worth no less. */
function filledUp(problem: CuttingProblem, capacity: number, takes: Takes): Takes {
  const counts = new Map(takes.map(({ item, count }) => [item, count]))
  let rest = takes.reduce(
    (left, { item, count }) => left - count * (problem.items[item]?.size ?? 0),
    capacity,
  )
  problem.items.forEach(({ size, demand }, item) => {
    const taken = counts.get(item) ?? 0
    const more = Math.min(demand - taken, Math.floor(rest / size))
    if (more <= 0) return
    counts.set(item, taken + more)
    rest -= more * size
  })
  return [...counts].map(([item, count]) => ({ item, count })).sort((left, right) => left.item - right.item)
}
