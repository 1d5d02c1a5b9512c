import { Fraction, largerOf, zero } from './fraction.ts'

/** The contested garment: each gets what the other concedes, and half of the rest. */
export function contestedGarment(
  estate: Fraction,
  claims: readonly [Fraction, Fraction],
): [Fraction, Fraction] {
  const [first, second] = claims
  const conceded = [largerOf(zero, estate.minus(second)), largerOf(zero, estate.minus(first))] as const
  const half = estate.minus(conceded[0]).minus(conceded[1]).dividedBy(new Fraction(2))
  return [conceded[0].plus(half), conceded[1].plus(half)]
}
