import { addRatios, type Ratio, ratio } from './ratio.ts'

/**
 * The exact sum of many quotients. Those over the same denominator are added first, and the rest pair by pair, so that no
 * long number meets a short one more often than it must: a thousand unlike denominators are still quick.
 */
export function sumRatios(values: readonly Ratio[]): Ratio {
  const byUnder = new Map<bigint, bigint>()
  for (const { over, under } of values) byUnder.set(under, (byUnder.get(under) ?? 0n) + over)
  let sums: Ratio[] = [...byUnder].map(([under, over]) => ({ over, under }))
  while (sums.length > 1) {
    const paired: Ratio[] = []
    for (let at = 0; at < sums.length; at += 2) {
      const [left, right] = [sums[at], sums[at + 1]]
      if (left !== undefined) paired.push(right === undefined ? left : addRatios(left, right))
    }
    sums = paired
  }
  return sums[0] ?? ratio(0n, 1n)
}
