import { Fraction, sum } from './fraction.ts'
import { type Game, groupsOf, holds, playersOf } from './game.ts'

/**
 * The Shapley value: what each player adds when it joins, averaged over all orders of joining (L. S. Shapley, 1953): the
 * sum over the groups that hold it of (s − 1)! (n − s)! / n! times what it adds.
 */
export function shapleyValue(game: Game): Fraction[] {
  const all = factorial(game.players)
  return playersOf(game).map((player) =>
    sum(
      groupsOf(game)
        .filter((group) => holds(group, player))
        .map((group) => {
          const size = playersOf(game).filter((one) => holds(group, one)).length
          const weight = new Fraction(factorial(size - 1) * factorial(game.players - size), all)
          return weight.times(game.worth(group).minus(game.worth(group & ~(1 << player))))
        }),
    ),
  )
}

function factorial(number: number): bigint {
  return number <= 1 ? 1n : BigInt(number) * factorial(number - 1)
}
