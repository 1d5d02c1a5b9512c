import type { Nanometres } from './cutRequest.ts'
import type { CuttingProblem } from './cuttingProblem.ts'
import { type Packing, type Pattern, spareOf, type Takes } from './packing.ts'
import type { Column, Row } from './solver.ts'

/** What a search makes least, and what it may leave out. */
export type Goal = {
  /** What one length of each kind costs, a whole multiple of `each`. */
  readonly binCosts: readonly number[]
  /** What leaving out one of each item costs, a whole multiple of `each`. */
  readonly unplacedCosts: readonly number[]
  /** Length of items that may be left out in all; 0 where everything is to be placed, Infinity where nothing must. */
  readonly unplacedAtMost: Nanometres
  /** Two costs differ by this or not at all. */
  readonly each: number
}

export function costOf(goal: Goal, packing: Packing, unplaced: readonly number[]): number {
  const cut = packing.reduce((sum, { bin, times }) => sum + (goal.binCosts[bin] ?? 0) * times, 0)
  return unplaced.reduce((sum, count, item) => sum + count * (goal.unplacedCosts[item] ?? 0), cut)
}

/** Costs go to the solver in parts of the largest one. */
export function scaleOf(goal: Goal): number {
  return Math.max(1, ...goal.binCosts, ...goal.unplacedCosts)
}

/** The next cost that a plan can have, with a hair for floating point. */
export function roundedUp(value: number, each: number): number {
  return Math.ceil(value / each - 1e-7) * each
}

/**
 * The rows that every plan must keep: each item's demand, the number of lengths of each limited kind, and what may be
 * left out. `exactly` where no pattern may hold more than is needed.
 */
export type Frame = {
  readonly rows: readonly Row[]
  readonly binRows: readonly (number | undefined)[]
  readonly columnOf: (pattern: Pattern, cost: number) => Column
  readonly unplacedColumns: (costs: readonly number[]) => readonly Column[]
}

export function frameOf(problem: CuttingProblem, unplacedAtMost: Nanometres, exactly: boolean): Frame {
  const { items, bins } = problem
  const rows: Row[] = items.map(({ demand }) => ({
    lower: demand,
    upper: exactly ? demand : Number.POSITIVE_INFINITY,
  }))
  const binRows = bins.map(({ count }) => {
    if (count === Number.POSITIVE_INFINITY) return undefined
    rows.push({ lower: 0, upper: count })
    return rows.length - 1
  })
  const budgetRow = rows.length
  const limited = unplacedAtMost > 0 && unplacedAtMost < Number.POSITIVE_INFINITY
  // In thousandths of what may be left out, so that the solver sees figures of one size.
  if (limited) rows.push({ lower: 0, upper: 1000 })
  return {
    rows,
    binRows,
    columnOf: ({ bin, takes }, cost) => {
      const entries = takes.map(({ item, count }) => ({ row: item, value: count }))
      const row = binRows[bin]
      if (row !== undefined) entries.push({ row, value: 1 })
      return { cost, upper: Number.POSITIVE_INFINITY, entries }
    },
    unplacedColumns: (costs) =>
      unplacedAtMost === 0
        ? []
        : items.map(({ length, demand }, item) => ({
            cost: costs[item] ?? 0,
            upper: demand,
            entries: limited
              ? [
                  { row: item, value: 1 },
                  { row: budgetRow, value: (length / unplacedAtMost) * 1000 },
                ]
              : [{ row: item, value: 1 }],
          })),
  }
}

/** Patterns and how often each is cut, less what they hold beyond the demand. */
export function packingOf(
  problem: CuttingProblem,
  patterns: readonly Pattern[],
  times: readonly number[],
): Packing {
  const left = problem.items.map(({ demand }) => demand)
  const packing: Packing[number][] = []
  const used = patterns
    .map((pattern, at) => ({ ...pattern, times: times[at] ?? 0, spare: spareOf(problem, pattern) }))
    .filter((pattern) => pattern.times > 0)
    // Those that use their length up stay whole: it saves them a cut.
    .sort((one, other) => one.spare - other.spare)
  for (const { bin, takes, times: wanted } of used) {
    for (let open = wanted; open > 0; ) {
      const needed: Takes = takes
        .map(({ item, count }) => ({ item, count: Math.min(count, left[item] ?? 0) }))
        .filter(({ count }) => count > 0)
      if (needed.length === 0) break
      let alike = open
      for (const { item, count } of needed) alike = Math.min(alike, Math.floor((left[item] ?? 0) / count))
      for (const { item, count } of needed) left[item] = (left[item] ?? 0) - count * alike
      packing.push({ bin, takes: needed, times: alike })
      open -= alike
    }
  }
  return packing
}
