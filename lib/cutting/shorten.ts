import type { CuttingProblem } from './cuttingProblem.ts'
import { type Packing, spareOf } from './packing.ts'

/** Cuts each pattern from the shortest length that holds it and is still free, from what is there before what is bought. */
export function shorten(problem: CuttingProblem, packing: Packing): Packing {
  const { bins } = problem
  const free = bins.map(({ count }) => count)
  for (const { bin, times } of packing) free[bin] = (free[bin] ?? 0) - times
  const shortened: Packing[number][] = []
  // What is bought and long has the most to gain.
  const costliestFirst = [...packing].sort((left, right) => right.bin - left.bin)
  for (const pattern of costliestFirst) {
    const needed = (bins[pattern.bin]?.capacity ?? 0) - spareOf(problem, pattern)
    let left = pattern.times
    // Bins stand in the order of what they cost: there already before bought, short before long.
    for (let bin = 0; bin < pattern.bin && left > 0; bin += 1) {
      const times = (bins[bin]?.capacity ?? 0) >= needed ? Math.min(left, free[bin] ?? 0) : 0
      if (times === 0) continue
      free[bin] = (free[bin] ?? 0) - times
      free[pattern.bin] = (free[pattern.bin] ?? 0) + times
      left -= times
      shortened.push({ ...pattern, bin, times })
    }
    if (left > 0) shortened.push({ ...pattern, times: left })
  }
  return shortened
}
