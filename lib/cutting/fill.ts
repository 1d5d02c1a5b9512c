import type { Nanometres } from './cutRequest.ts'
import type { Takes } from './packing.ts'

/** A kind of piece that may go into a length: what it takes, what it is worth, how many there may be. */
export type Candidate = {
  readonly item: number
  readonly size: Nanometres
  readonly value: number
  readonly limit: number
}

/** Steps that a search may still take; counted, not timed, so that every machine finds the same. */
export type Budget = { steps: number }

export type Fill = {
  readonly takes: Takes
  readonly value: number
  /** Whether nothing worth more exists, or only nothing was found within the budget. */
  readonly complete: boolean
}

/** Candidates by worth per length, best first: then what the rest can still be worth is known at a glance. */
export function byWorth(candidates: readonly Candidate[]): Candidate[] {
  return candidates
    .filter(({ limit }) => limit > 0)
    .sort((left, right) => right.value * left.size - left.value * right.size || right.size - left.size)
}

/**
 * Goes through the ways to fill a capacity, the most promising first, and leaves out those that can't be worth more than
 * `least()`. Values must not be negative.
 *
 * @param candidates by worth, as `byWorth` puts them
 * @param found gets each way with nothing left undecided; `counts` runs like `candidates` and is used again
 * @returns whether all was gone through within the budget
 */
export function searchFills(
  capacity: Nanometres,
  candidates: readonly Candidate[],
  least: () => number,
  found: (counts: readonly number[], value: number, rest: Nanometres) => void,
  budget: Budget,
): boolean {
  const counts = candidates.map(() => 0)
  // The smallest size from here on: where that does not fit, nothing does.
  const smallest = candidates.map(({ size }) => size)
  for (let at = smallest.length - 2; at >= 0; at -= 1) {
    smallest[at] = Math.min(smallest[at] ?? 0, smallest[at + 1] ?? 0)
  }

  function fillFrom(from: number, rest: Nanometres, value: number): boolean {
    let at = from
    let candidate = candidates[at]
    while (candidate && candidate.size > rest && (smallest[at] ?? 0) <= rest) {
      budget.steps -= 1
      at += 1
      candidate = candidates[at]
    }
    budget.steps -= 1
    if (budget.steps < 0) return false
    if (!candidate || candidate.size > rest) {
      if (value > least()) found(counts, value, rest)
      return true
    }
    const { size, value: worth, limit } = candidate
    if (value + (rest * worth) / size <= least()) return true
    for (let count = Math.min(limit, Math.floor(rest / size)); count >= 0; count -= 1) {
      counts[at] = count
      const goneThrough = fillFrom(at + 1, rest - count * size, value + count * worth)
      counts[at] = 0
      if (!goneThrough) return false
    }
    return true
  }
  return fillFrom(0, capacity, 0)
}

/** The fill worth most. What is worth less than 1e-12 of a unit more counts as worth the same. */
export function mostValuableFill(
  capacity: Nanometres,
  candidates: readonly Candidate[],
  budget: Budget,
): Fill {
  const sorted = byWorth(candidates)
  let best = 0
  let bestCounts: readonly number[] = []
  const complete = searchFills(
    capacity,
    sorted,
    () => best + 1e-12,
    (counts, value) => {
      best = value
      bestCounts = [...counts]
    },
    budget,
  )
  return { takes: takesOf(sorted, bestCounts), value: best, complete }
}

export function takesOf(candidates: readonly Candidate[], counts: readonly number[]): Takes {
  return counts
    .map((count, at) => ({ item: candidates[at]?.item ?? 0, count }))
    .filter(({ count }) => count > 0)
    .sort((left, right) => left.item - right.item)
}
