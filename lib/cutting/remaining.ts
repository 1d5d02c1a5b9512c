import type { Nanometres } from './cutRequest.ts'
import type { Item } from './cuttingProblem.ts'
import type { Takes } from './packing.ts'

/** Pieces that are not planned yet, so kept that the longest one that fits is found without going through all. */
export type Remaining = {
  readonly left: (item: number) => number
  /** The first item from `from` on of which some are left and whose size is at most `size`; undefined where there is none. */
  readonly longest: (size: Nanometres, from?: number) => number | undefined
  readonly take: (takes: Takes, times: number) => void
}

/** @param items longest first */
export function remainingOf(items: readonly Item[]): Remaining {
  const left = items.map(({ demand }) => demand)
  // Where to look on from an item: shortened to the next one that has some left whenever it is walked.
  const onward = items.map((_, item) => item)
  onward.push(items.length)

  function nextLeft(from: number): number {
    let at = from
    while (at < items.length && (left[at] ?? 0) === 0) {
      const beyond = Math.max(at + 1, onward[at] ?? items.length)
      onward[at] = Math.max(beyond, onward[beyond] ?? beyond)
      at = onward[at] ?? items.length
    }
    return at
  }

  function firstAtMost(size: Nanometres, from: number): number {
    let [low, high] = [from, items.length]
    while (low < high) {
      const middle = (low + high) >> 1
      if ((items[middle]?.size ?? 0) <= size) high = middle
      else low = middle + 1
    }
    return low
  }

  return {
    left: (item) => left[item] ?? 0,
    longest: (size, from = 0) => {
      const found = nextLeft(firstAtMost(size, from))
      return found < items.length ? found : undefined
    },
    take: (takes, times) => {
      for (const { item, count } of takes) left[item] = (left[item] ?? 0) - count * times
    },
  }
}
