import { Fraction, sum, zero } from './fraction.ts'
import { everybody, type Game, playersOf } from './game.ts'

/** What a player's joining last adds to the cost. */
export function separableCosts(costs: Game): Fraction[] {
  const whole = costs.worth(everybody(costs))
  return playersOf(costs).map((player) => whole.minus(costs.worth(everybody(costs) & ~(1 << player))))
}

/**
 * Separable costs, remaining benefits (the alternate cost avoided method): each pays what its joining adds, and the rest
 * in proportion to what it would pay alone beyond that. Where nobody has such a benefit each pays what it adds.
 */
export function separableCostsRemainingBenefits(costs: Game): Fraction[] {
  const added = separableCosts(costs)
  const benefits = added.map((cost, player) => costs.worth(1 << player).minus(cost))
  const rest = costs.worth(everybody(costs)).minus(sum(added))
  const whole = sum(benefits)
  return added.map((cost, player) =>
    whole.sign === 0 ? cost : cost.plus(rest.times(benefits[player] ?? zero).dividedBy(whole)),
  )
}

/** Each pays what its joining adds, and an equal part of the rest. */
export function equalChargeOfTheRest(costs: Game): Fraction[] {
  const added = separableCosts(costs)
  const rest = costs.worth(everybody(costs)).minus(sum(added)).dividedBy(new Fraction(costs.players))
  return added.map((cost) => cost.plus(rest))
}
