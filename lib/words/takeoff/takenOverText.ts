import type { LinesFromTakeOff, TakenOver } from '../../core/takeoff/takenOver.ts'
import { spokenList } from '../summary/names.ts'

/** What putting the quantities among the cost lines came to. */
export function takenOverWords({ added, renewed }: TakenOver): string {
  if (added === 0 && renewed === 0)
    return 'Put among the cost lines: no line was added, and none took another quantity.'
  const parts = [
    ...(added === 0 ? [] : [`${lines(added)} added`]),
    ...(renewed === 0 ? [] : [`${lines(renewed)} given the take-off’s quantity of now`]),
  ]
  return `Put among the cost lines: ${spokenList(parts)}.`
}

/** How many of the lines have no price yet, and what was typed by hand beside them. */
export function fromTakeOffWords({ taken, unpriced, beside }: LinesFromTakeOff): readonly string[] {
  return [
    ...(unpriced === 0
      ? []
      : [
          `${unpricedOf(taken, unpriced)} no price yet and ${unpriced === 1 ? 'counts' : 'count'} as nothing until then.`,
        ]),
    ...(beside.length === 0
      ? []
      : [
          `What was typed by hand stays beside them: ${spokenList(named(beside.map(({ what }) => what)))}. What is both in there and in a line from the take-off is counted twice once both have a price: keep it in one of the two.`,
        ]),
  ]
}

function unpricedOf(taken: number, unpriced: number): string {
  if (taken === unpriced)
    return taken === 1 ? 'The line from the take-off has' : `All ${taken} lines from the take-off have`
  return `Of the ${taken} lines from the take-off ${unpriced === 1 ? '1 has' : `${unpriced} have`}`
}

function lines(count: number): string {
  return count === 1 ? '1 line' : `${count} lines`
}

/** The first few by name. */
function named(all: readonly string[]): readonly string[] {
  const words = all.map((what) => (what.trim() === '' ? 'a line without a name' : `“${what.trim()}”`))
  return words.length <= 4 ? words : [...words.slice(0, 3), `${words.length - 3} more`]
}
