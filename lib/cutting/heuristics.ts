import type { Nanometres } from './cutRequest.ts'
import type { CuttingProblem } from './cuttingProblem.ts'
import { type Budget, mostValuableFill } from './fill.ts'
import { betterPacking, type Packing, type Takes } from './packing.ts'
import { shorten } from './shorten.ts'

/**
 * How a length is filled: always the longest piece that still fits (first-fit decreasing); the longest one and beside it
 * what leaves the least rest; or whatever leaves the least rest (best fit).
 */
type Filling = 'longest first' | 'longest and best rest' | 'best rest'

type Way = {
  readonly filling: Filling
  /** Which of the lengths that are there are used first. */
  readonly thereFirst: 'shortest' | 'longest'
  /** Place of the kind of length that is bought where it can be, or whichever comes cheapest each time. */
  readonly buy: number | 'cheapest'
}

const fillings: readonly Filling[] = ['longest first', 'longest and best rest', 'best rest']
const stepsPerWay = 300_000
const stepsPerFill = 20_000
const mostKindsTried = 6
const mostCandidates = 200

/** The best of a fixed set of quick plans: what is there is used first, then is bought. Always the same for a problem. */
export function quickPacking(problem: CuttingProblem): Packing {
  let best: Packing | undefined
  for (const way of waysFor(problem)) {
    const packing = shorten(problem, packBy(problem, way))
    best = best === undefined ? packing : betterPacking(problem, best, packing)
  }
  return best ?? []
}

/** The quickest of them: first-fit decreasing, each time from the kind of length that comes cheapest. */
export function firstFitPacking(problem: CuttingProblem): Packing {
  return packBy(problem, { filling: 'longest first', thereFirst: 'shortest', buy: 'cheapest' })
}

function waysFor(problem: CuttingProblem): Way[] {
  const bought = problem.bins.flatMap((bin, at) => (bin.bought ? [at] : []))
  const there = problem.bins.length - bought.length
  const buys: Way['buy'][] = bought.length > 1 ? ['cheapest', ...bought.slice(-mostKindsTried)] : ['cheapest']
  const orders: Way['thereFirst'][] = there > 1 ? ['shortest', 'longest'] : ['shortest']
  return fillings.flatMap((filling) =>
    orders.flatMap((thereFirst) => buys.map((buy) => ({ filling, thereFirst, buy }))),
  )
}

function packBy(problem: CuttingProblem, way: Way): Packing {
  const { items, bins } = problem
  const left = items.map(({ demand }) => demand)
  const stock = bins.map(({ count }) => count)
  const budget: Budget = { steps: stepsPerWay }
  const packing: Packing[number][] = []

  const fill = (bin: number) => fillOf(problem, way.filling, bins[bin]?.capacity ?? 0, left, budget)
  const cut = (bin: number, takes: Takes) => {
    let times = stock[bin] ?? 0
    for (const { item, count } of takes) times = Math.min(times, Math.floor((left[item] ?? 0) / count))
    for (const { item, count } of takes) left[item] = (left[item] ?? 0) - count * times
    stock[bin] = (stock[bin] ?? 0) - times
    packing.push({ bin, takes, times })
  }

  const there = bins.flatMap((bin, at) => (bin.bought ? [] : [at]))
  if (way.thereFirst === 'longest') there.reverse()
  for (const bin of there) {
    for (let takes = fill(bin); (stock[bin] ?? 0) > 0 && takes.length > 0; takes = fill(bin)) cut(bin, takes)
  }
  for (let longest = left.findIndex((count) => count > 0); longest >= 0; ) {
    const size = items[longest]?.size ?? 0
    const holding = bins.flatMap((bin, at) =>
      bin.bought && bin.capacity >= size && (stock[at] ?? 0) > 0 ? [at] : [],
    )
    const bin = chooseBought(problem, way.buy, holding, fill)
    // Where no length is left for the longest piece there may be one for the next.
    if (bin !== undefined) cut(bin, fill(bin))
    const from = bin === undefined ? longest + 1 : longest
    longest = left.findIndex((count, at) => at >= from && count > 0)
  }
  return packing
}

function chooseBought(
  problem: CuttingProblem,
  buy: Way['buy'],
  holding: readonly number[],
  fill: (bin: number) => Takes,
): number | undefined {
  if (buy !== 'cheapest') return holding.includes(buy) ? buy : holding[0]
  if (holding.length <= 1) return holding[0]
  let best: { bin: number; perPlaced: number } | undefined
  for (const bin of holding) {
    const placed = fill(bin).reduce(
      (sum, { item, count }) => sum + count * (problem.items[item]?.size ?? 0),
      0,
    )
    const perPlaced = (problem.bins[bin]?.length ?? 0) / placed
    if (best === undefined || perPlaced < best.perPlaced) best = { bin, perPlaced }
  }
  return best?.bin
}

function fillOf(
  problem: CuttingProblem,
  filling: Filling,
  capacity: Nanometres,
  left: readonly number[],
  budget: Budget,
): Takes {
  if (filling === 'longest first' || budget.steps <= 0) return longestFirst(problem, capacity, left)
  const first = problem.items.findIndex(({ size }, item) => size <= capacity && (left[item] ?? 0) > 0)
  if (first < 0) return []
  const forced = filling === 'longest and best rest' ? 1 : 0
  const candidates = thinned(
    problem.items.flatMap(({ size }, item) => {
      const limit = (left[item] ?? 0) - (item === first ? forced : 0)
      return limit > 0 && size <= capacity ? [{ item, size, value: size, limit }] : []
    }),
  )
  const allowed = { steps: Math.min(stepsPerFill, budget.steps) }
  const before = allowed.steps
  const rest = capacity - forced * (problem.items[first]?.size ?? 0)
  const { takes } = mostValuableFill(rest, candidates, allowed)
  budget.steps -= before - Math.max(0, allowed.steps)
  if (forced === 0) return takes
  const beside = takes.find(({ item }) => item === first)?.count ?? 0
  return [{ item: first, count: beside + 1 }, ...takes.filter(({ item }) => item !== first)]
}

/** Of very many different pieces an even choice does: they fill a length just as well. */
function thinned<Candidate>(candidates: readonly Candidate[]): readonly Candidate[] {
  const every = Math.ceil(candidates.length / mostCandidates)
  return every <= 1 ? candidates : candidates.filter((_, at) => at % every === 0)
}

function longestFirst(problem: CuttingProblem, capacity: Nanometres, left: readonly number[]): Takes {
  const takes: { item: number; count: number }[] = []
  let rest = capacity
  problem.items.forEach(({ size }, item) => {
    const count = Math.min(left[item] ?? 0, Math.floor(rest / size))
    if (count === 0) return
    takes.push({ item, count })
    rest -= count * size
  })
  return takes
}
