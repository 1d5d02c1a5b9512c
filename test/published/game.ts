import { Fraction, sum, zero } from './fraction.ts'

/**
 * A game of players 0 to n − 1: what each group of them is worth, or costs, together. A group is a bit mask: 0b101 is
 * players 0 and 2.
 */
export type Game = { readonly players: number; readonly worth: (group: number) => Fraction }

/** A game from printed figures, by group, as the source lists them: `{ '1': 68, '12': 170, … }`. */
export function gameOf(players: number, figures: Readonly<Record<string, string | number>>): Game {
  const table = new Map<number, Fraction>([[0, zero]])
  for (const [group, figure] of Object.entries(figures)) {
    const mask = [...group].reduce((bits, player) => bits | (1 << (Number(player) - 1)), 0)
    table.set(mask, Fraction.of(figure))
  }
  if (table.size !== 2 ** players) throw new Error(`${table.size} of ${2 ** players} groups are given`)
  return { players, worth: (group) => table.get(group) ?? zero }
}

export function playersOf(game: Game): readonly number[] {
  return Array.from({ length: game.players }, (_, player) => player)
}

export const everybody = (game: Game): number => 2 ** game.players - 1

/** All groups but nobody. */
export function groupsOf(game: Game): readonly number[] {
  return Array.from({ length: everybody(game) }, (_, index) => index + 1)
}

export const holds = (group: number, player: number): boolean => (group & (1 << player)) !== 0

/** What a group receives of an allocation. */
export function received(allocation: readonly Fraction[], group: number): Fraction {
  return sum(allocation.filter((_, player) => holds(group, player)))
}

/** Turns a cost game into the game of what each group saves against everyone alone. */
export function savingsOf(costs: Game): Game {
  const alone = playersOf(costs).map((player) => costs.worth(1 << player))
  return { players: costs.players, worth: (group) => received(alone, group).minus(costs.worth(group)) }
}

/** Charges that leave each player these savings. */
export function chargesFor(costs: Game, savings: readonly Fraction[]): Fraction[] {
  return playersOf(costs).map((player) => costs.worth(1 << player).minus(savings[player] ?? zero))
}

/** Whether no group is charged more than it would pay by itself (Fragnelli's lecture text, found in a public text). */
export function isInCore(costs: Game, charges: readonly Fraction[]): boolean {
  const whole = costs.worth(everybody(costs))
  return (
    received(charges, everybody(costs)).compare(whole) === 0 &&
    groupsOf(costs).every((group) => received(charges, group).compare(costs.worth(group)) <= 0)
  )
}
