import { Fraction, zero } from './fraction.ts'
import type { Game } from './game.ts'

/** The cost of a runway that is long enough for each of a group: that of its dearest. */
export function airportGame(costs: readonly Fraction[]): Game {
  return {
    players: costs.length,
    worth: (group) =>
      costs
        .filter((_, player) => (group & (1 << player)) !== 0)
        .reduce((dearest, cost) => (cost.compare(dearest) > 0 ? cost : dearest), zero),
  }
}

/**
 * The rule of S. C. Littlechild & G. Owen (Management Science 20, 1973), costs in rising order: each step up is shared
 * equally by those who need it.
 */
export function airportCharges(costs: readonly Fraction[]): Fraction[] {
  let [charge, before] = [zero, zero]
  return costs.map((cost, place) => {
    charge = charge.plus(cost.minus(before).dividedBy(new Fraction(costs.length - place)))
    before = cost
    return charge
  })
}
