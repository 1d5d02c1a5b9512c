import type { Nanometres } from './cutRequest.ts'
import type { CuttingProblem } from './cuttingProblem.ts'
import { type Budget, type Candidate, mostValuableFill } from './fill.ts'
import { betterPacking, type Packing, type Takes } from './packing.ts'
import { type Remaining, remainingOf } from './remaining.ts'
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
const mostItemsForAllWays = 200
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

function waysFor({ bins, items }: CuttingProblem): Way[] {
  const bought = bins.flatMap((bin, at) => (bin.bought ? [at] : []))
  const there = bins.length - bought.length
  const many = items.length > mostItemsForAllWays
  const buys: Way['buy'][] =
    bought.length > 1 && !many ? ['cheapest', ...bought.slice(-mostKindsTried)] : ['cheapest']
  const orders: Way['thereFirst'][] = there > 1 && !many ? ['shortest', 'longest'] : ['shortest']
  return fillings.flatMap((filling) =>
    orders.flatMap((thereFirst) => buys.map((buy) => ({ filling, thereFirst, buy }))),
  )
}

function packBy(problem: CuttingProblem, way: Way): Packing {
  const { items, bins } = problem
  const remaining = remainingOf(items)
  const stock = bins.map(({ count }) => count)
  const budget: Budget = { steps: stepsPerWay }
  const packing: Packing[number][] = []

  const fill = (bin: number) => fillOf(problem, way.filling, bins[bin]?.capacity ?? 0, remaining, budget)
  const cut = (bin: number, takes: Takes) => {
    let times = stock[bin] ?? 0
    for (const { item, count } of takes) times = Math.min(times, Math.floor(remaining.left(item) / count))
    remaining.take(takes, times)
    stock[bin] = (stock[bin] ?? 0) - times
    packing.push({ bin, takes, times })
  }

  const there = bins.flatMap((bin, at) => (bin.bought ? [] : [at]))
  if (way.thereFirst === 'longest') there.reverse()
  for (const bin of there) {
    for (let takes = fill(bin); (stock[bin] ?? 0) > 0 && takes.length > 0; takes = fill(bin)) cut(bin, takes)
  }
  let longest = remaining.longest(Number.POSITIVE_INFINITY)
  while (longest !== undefined) {
    const size = items[longest]?.size ?? 0
    const holding = bins.flatMap((bin, at) =>
      bin.bought && bin.capacity >= size && (stock[at] ?? 0) > 0 ? [at] : [],
    )
    const chosen = chooseBought(problem, way.buy, holding, fill)
    if (chosen !== undefined) cut(chosen.bin, chosen.takes)
    // Where no length is left for the longest piece there may be one for the next.
    const from = chosen === undefined ? longest + 1 : longest
    longest = remaining.longest(Number.POSITIVE_INFINITY, from)
  }
  return packing
}

type Filled = { readonly bin: number; readonly takes: Takes }

function chooseBought(
  problem: CuttingProblem,
  buy: Way['buy'],
  holding: readonly number[],
  fill: (bin: number) => Takes,
): Filled | undefined {
  const [first] = holding
  if (first === undefined) return undefined
  if (buy !== 'cheapest') {
    const bin = holding.includes(buy) ? buy : first
    return { bin, takes: fill(bin) }
  }
  let best: (Filled & { perPlaced: number }) | undefined
  for (const bin of holding) {
    const takes = fill(bin)
    const placed = takes.reduce((sum, { item, count }) => sum + count * (problem.items[item]?.size ?? 0), 0)
    const perPlaced = (problem.bins[bin]?.length ?? 0) / placed
    if (best === undefined || perPlaced < best.perPlaced) best = { bin, takes, perPlaced }
  }
  return best
}

function fillOf(
  problem: CuttingProblem,
  filling: Filling,
  capacity: Nanometres,
  remaining: Remaining,
  budget: Budget,
): Takes {
  if (filling === 'longest first' || budget.steps <= 0) return longestFirst(problem, capacity, remaining)
  const first = remaining.longest(capacity)
  if (first === undefined) return []
  const forced = filling === 'longest and best rest' ? 1 : 0
  const rest = capacity - forced * (problem.items[first]?.size ?? 0)
  const candidates = candidatesFor(problem, rest, remaining).map((candidate) =>
    candidate.item === first ? { ...candidate, limit: candidate.limit - forced } : candidate,
  )
  const allowed = { steps: Math.min(stepsPerFill, budget.steps) }
  const before = allowed.steps
  const { takes } = mostValuableFill(rest, candidates, allowed)
  budget.steps -= before - Math.max(0, allowed.steps)
  if (forced === 0) return takes
  const beside = takes.find(({ item }) => item === first)?.count ?? 0
  return [{ item: first, count: beside + 1 }, ...takes.filter(({ item }) => item !== first)]
}

/** What fits and is left; of very many different pieces an even choice, which fills a length just as well. */
function candidatesFor({ items }: CuttingProblem, capacity: Nanometres, remaining: Remaining): Candidate[] {
  const candidates: Candidate[] = []
  let item = remaining.longest(capacity)
  const every = item === undefined ? 1 : Math.ceil((items.length - item) / mostCandidates)
  while (item !== undefined) {
    const size = items[item]?.size ?? 0
    candidates.push({ item, size, value: size, limit: remaining.left(item) })
    item = remaining.longest(capacity, item + every)
  }
  return candidates
}

function longestFirst({ items }: CuttingProblem, capacity: Nanometres, remaining: Remaining): Takes {
  const takes: { item: number; count: number }[] = []
  let rest = capacity
  let item = remaining.longest(rest)
  while (item !== undefined) {
    const size = items[item]?.size ?? 0
    const count = Math.min(remaining.left(item), Math.floor(rest / size))
    takes.push({ item, count })
    rest -= count * size
    item = remaining.longest(rest, item + 1)
  }
  return takes
}
