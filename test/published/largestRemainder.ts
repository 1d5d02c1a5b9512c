import { Fraction, sum, zero } from './fraction.ts'

/**
 * The largest remainder method (A. Hamilton): each exact quota is cut down to whole units, and the units left over go one
 * each to the largest remainders; ties in the order of the list.
 */
export function largestRemainder(whole: bigint, weights: readonly Fraction[]): bigint[] {
  const total = sum(weights)
  const quotas = weights.map((weight) => weight.times(new Fraction(whole)).dividedBy(total))
  return completed(whole, quotas)
}

/** The same for exact quotas that add to the whole. */
export function completed(whole: bigint, quotas: readonly Fraction[]): bigint[] {
  const units = quotas.map((quota) => quota.floor)
  const left = Number(whole - units.reduce((count, one) => count + one, 0n))
  const remainder = (place: number) => (quotas[place] ?? zero).minus(new Fraction(units[place] ?? 0n))
  const order = quotas.map((_, place) => place).sort((one, other) => remainder(other).compare(remainder(one)))
  const lucky = new Set(order.slice(0, left))
  return units.map((count, place) => (lucky.has(place) ? count + 1n : count))
}
