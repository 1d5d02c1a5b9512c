import type { Notebook } from '../../core/agreement/notebook.ts'
import { compareLengths, type Millimetres } from '../../core/amounts/length.ts'
import { type Household, households } from '../../core/people/household.ts'
import type { GroundSaid } from '../../core/takeoff/ground.ts'
import type { TakeOff } from '../../core/takeoff/takeOff.ts'
import { householdName } from '../labels.ts'
import { stationWords } from '../length.ts'

/**
 * What heights over the ground rest on where nobody wrote that ground down: whose ground stands in for it, and from where to
 * where it is known. Nothing where every height is over ground that was written down.
 */
export function groundSentences(
  notebook: Notebook,
  { ground, heights }: Pick<TakeOff, 'ground' | 'heights'>,
): readonly string[] {
  const [first, last] = [heights[0]?.at, heights.at(-1)?.at]
  if (first === undefined || last === undefined) return []
  const { a, b } = ground.said
  if (a === undefined || b === undefined)
    return ['No station says a ground height yet, so the ground is taken as level on both sides.']
  return households.flatMap((side) => sideSentence(notebook, side, side === 'a' ? a : b, first, last))
}

function sideSentence(
  notebook: Notebook,
  side: Household,
  { by, from, to }: GroundSaid,
  first: Millimetres,
  last: Millimetres,
): readonly string[] {
  const whole = compareLengths(from, first) <= 0 && compareLengths(last, to) <= 0
  if (whole && by === side) return []
  const place = (at: Millimetres) => stationWords(at, notebook.units)
  const ground = `The ground of ${householdName(notebook, side)}`
  const known =
    compareLengths(from, to) === 0
      ? `said at ${place(from)} only`
      : `said from ${place(from)} to ${place(to)} only`
  const level = 'Elsewhere it is taken as level: measure it there before you rely on a height over it.'
  if (by === side) return [`${ground} is ${known}. ${level}`]
  const other = by === 'fence' ? 'that under the fence' : `that of ${householdName(notebook, by)}`
  return [`${ground} is not said: ${other} stands in for it${whole ? '.' : `, and is ${known}. ${level}`}`]
}
