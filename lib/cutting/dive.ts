import type { Highs } from 'highs'
import { columnGeneration, type Relaxed } from './columnGeneration.ts'
import type { CuttingProblem } from './cuttingProblem.ts'
import type { Goal } from './goal.ts'
import { firstFitPacking } from './heuristics.ts'
import type { Packing, Pattern } from './packing.ts'

const refining = { rounds: 40, steps: 1_000_000, boundOnly: false }

/** How a dive goes down: they end in different plans, and none is best for every task. */
export type DiveStyle = {
  /** The part of a time from which a pattern counts as cut once more. */
  readonly clear: number
  /** How many pieces are left to `finish`. */
  readonly lastPieces: number
}

export const diveStyles: readonly DiveStyle[] = [
  { clear: 0.75, lastPieces: 14 },
  { clear: 0.95, lastPieces: 14 },
  { clear: 0.6, lastPieces: 18 },
  { clear: 0.95, lastPieces: 20 },
]

/**
 * A whole plan from a relaxed one: the patterns that are cut most nearly a whole number of times are fixed, the relaxation
 * of what remains is solved anew, with patterns made for it, and so on; `finish` plans the last few pieces. Undefined where
 * it comes to a dead end.
 */
export function dive(
  highs: Highs,
  problem: CuttingProblem,
  goal: Goal,
  relaxed: Relaxed,
  style: DiveStyle,
  finish: (rest: CuttingProblem, start: Packing) => Packing,
): Packing | undefined {
  // What may be left out is shared out over the whole plan, which a plan fixed piece by piece can't see.
  if (goal.unplacedAtMost !== 0) return undefined
  const fixed: Packing[number][] = []
  let rest = problem
  let now: Relaxed | undefined = relaxed
  while (now !== undefined) {
    const chosen = clearest(now, style.clear)
    if (chosen.length === 0) return undefined
    for (const { bin, takes, times } of chosen) {
      const part = needed(rest, { bin, takes }, times)
      if (part.times === 0) continue
      fixed.push({ bin, takes: part.takes, times: part.times })
      rest = without(rest, part, bin)
    }
    const start = firstFitPacking(rest)
    if (pieceCount(rest) <= style.lastPieces)
      return pieceCount(rest) === 0 ? fixed : [...fixed, ...finish(rest, start)]
    const known = now.patterns.map((pattern) => ({ ...needed(rest, pattern, 1), bin: pattern.bin }))
    const patterns = [...known.filter(({ times }) => times > 0), ...start]
    now = columnGeneration(highs, rest, goal, distinct(patterns), refining)
  }
  return undefined
}

/** Patterns cut a whole number of times or nearly, each that many times; or else the one that comes nearest. */
function clearest({ patterns, times }: Relaxed, clear: number): Packing {
  const rounded = patterns.map((pattern, at) => {
    const value = times[at] ?? 0
    return { ...pattern, value, times: Math.floor(value + 1 - clear) }
  })
  const whole = rounded.filter((pattern) => pattern.times > 0)
  if (whole.length > 0) return whole
  const [first, ...others] = rounded.filter(({ value }) => value > 1e-9)
  if (first === undefined) return []
  const nearest = others.reduce((best, other) => (other.value > best.value ? other : best), first)
  return [{ ...nearest, times: 1 }]
}

/** As much of a pattern as the rest still needs, as often as it needs it and lengths are left. */
function needed(
  rest: CuttingProblem,
  { bin, takes }: Pattern,
  wanted: number,
): Pick<Packing[number], 'takes' | 'times'> {
  const open = takes
    .map(({ item, count }) => ({ item, count: Math.min(count, rest.items[item]?.demand ?? 0) }))
    .filter(({ count }) => count > 0)
  let times = open.length === 0 ? 0 : Math.min(wanted, rest.bins[bin]?.count ?? 0)
  for (const { item, count } of open) {
    times = Math.min(times, Math.floor((rest.items[item]?.demand ?? 0) / count))
  }
  return { takes: open, times }
}

function without(
  rest: CuttingProblem,
  { takes, times }: Pick<Packing[number], 'takes' | 'times'>,
  bin: number,
): CuttingProblem {
  const items = [...rest.items]
  for (const { item, count } of takes) {
    const before = items[item]
    if (before) items[item] = { ...before, demand: before.demand - count * times }
  }
  const bins = rest.bins.map((kind, at) => (at === bin ? { ...kind, count: kind.count - times } : kind))
  return { ...rest, items, bins }
}

function pieceCount({ items }: CuttingProblem): number {
  return items.reduce((sum, { demand }) => sum + demand, 0)
}

function distinct(patterns: readonly Pattern[]): Pattern[] {
  const known = new Map<string, Pattern>()
  for (const { bin, takes } of patterns) {
    const name = `${bin}:${takes.map(({ item, count }) => `${item}x${count}`).join(' ')}`
    if (!known.has(name)) known.set(name, { bin, takes })
  }
  return [...known.values()]
}
