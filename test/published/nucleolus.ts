import { Fraction, one, zero } from './fraction.ts'
import { everybody, type Game, groupsOf, holds, playersOf } from './game.ts'
import { type Limit, maximise } from './linearProgram.ts'

/**
 * The nucleolus of a game of worths (D. Schmeidler, 1969), by one linear program after another: first the smallest gain
 * of any group over its worth is made as large as it can be, the groups that can't gain more are fixed, then the smallest
 * gain of the others, until all players' parts are known.
 */
export function nucleolus(game: Game): Fraction[] {
  const fixed = new Map<number, Fraction>([[everybody(game), zero]])
  let parts: Fraction[] = []
  while (fixed.size < groupsOf(game).length) {
    const open = groupsOf(game).filter((group) => !fixed.has(group))
    const best = largestGain(game, fixed, open)
    parts = best.parts
    const stuck = open.filter(
      (group) =>
        largestOf(game, fixed, open, best.gain, group).compare(game.worth(group).plus(best.gain)) === 0,
    )
    if (stuck.length === 0) throw new Error('each program fixes at least one group')
    for (const group of stuck) fixed.set(group, best.gain)
  }
  return parts
}

/** Columns: what each player has above its worth alone, then the gain, up and down. */
function columns(game: Game, group: number, gain: Fraction): Fraction[] {
  return [...playersOf(game).map((player) => (holds(group, player) ? one : zero)), gain, gain.negated()]
}

/** What a group has to receive, less what its players have alone. */
function aboveAlone(game: Game, group: number, amount: Fraction): Fraction {
  return playersOf(game)
    .filter((player) => holds(group, player))
    .reduce((rest, player) => rest.minus(game.worth(1 << player)), amount)
}

function atLeast(game: Game, group: number, amount: Fraction, gain: Fraction): Limit {
  return {
    coefficients: columns(game, group, gain).map((coefficient) => coefficient.negated()),
    most: aboveAlone(game, group, amount).negated(),
  }
}

function exactly(game: Game, group: number, amount: Fraction): Limit[] {
  const most = aboveAlone(game, group, amount)
  return [{ coefficients: columns(game, group, zero), most }, atLeast(game, group, amount, zero)]
}

function largestGain(game: Game, fixed: ReadonlyMap<number, Fraction>, open: readonly number[]) {
  const limits = [
    ...[...fixed].flatMap(([group, gain]) => exactly(game, group, game.worth(group).plus(gain))),
    ...open.map((group) => atLeast(game, group, game.worth(group), new Fraction(-1))),
  ]
  const goal = [...playersOf(game).map(() => zero), one, one.negated()]
  const { value, variables } = maximise(goal, limits)
  const parts = playersOf(game).map((player) => (variables[player] ?? zero).plus(game.worth(1 << player)))
  return { gain: value, parts }
}

/** The most a group can receive while no open group gains less. */
function largestOf(
  game: Game,
  fixed: ReadonlyMap<number, Fraction>,
  open: readonly number[],
  gain: Fraction,
  group: number,
): Fraction {
  const limits = [
    ...[...fixed].flatMap(([one, given]) => exactly(game, one, game.worth(one).plus(given))),
    ...open.map((one) => atLeast(game, one, game.worth(one).plus(gain), zero)),
  ]
  const { value } = maximise(columns(game, group, zero), limits)
  return playersOf(game)
    .filter((player) => holds(group, player))
    .reduce((total, player) => total.plus(game.worth(1 << player)), value)
}
