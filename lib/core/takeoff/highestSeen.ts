import type { Notebook } from '../agreement/notebook.ts'
import { compareLengths, lengthOf, type Millimetres } from '../amounts/length.ts'
import { addRatios } from '../amounts/ratio.ts'
import type { ForBoth, Household } from '../people/household.ts'
import { larger, lowestTerms, subtractRatios } from './exact.ts'
import type { TakeOff } from './takeOff.ts'

/**
 * How high a section is at most as each household sees it, exact; undefined where it is not said where it stands or how
 * high. At its ends only its own height counts, not that of a higher neighbour. Between posts and stations both the top
 * and the ground run straight, so that no higher place lies between them.
 *
 * @param index place of the section in the notebook's list
 */
export function highestSeen(
  notebook: Notebook,
  index: number,
  { tops, layout, heights, ground }: TakeOff,
): ForBoth<Millimetres> | undefined {
  const section = notebook.sections[index]
  if (section === undefined || section.from === '' || section.to === '' || section.height.agreed === '')
    return undefined
  const [from, to] = [lengthOf(section.from), lengthOf(section.to)]
  const agreed = lengthOf(section.height.agreed)
  const over = (top: Millimetres, at: Millimetres): ForBoth<Millimetres> => {
    const seen = (side: Household) => lowestTerms(subtractRatios(top, ground.of(side, at)))
    return { a: seen('a'), b: seen('b') }
  }
  const inside = heights.filter(({ at }) => compareLengths(from, at) < 0 && compareLengths(at, to) < 0)
  const bays = tops.bays.filter((bay) => bay.section === index && bay.top !== undefined)
  const ends =
    bays.length > 0
      ? bays.flatMap(({ left, right, top }) => {
          const [first, last] = [layout.posts[left]?.at, layout.posts[right]?.at]
          return top && first && last ? [over(top.left, first), over(top.right, last)] : []
        })
      : [from, to].map((at) => over(addRatios(ground.measured(section.height.measuredFrom, at), agreed), at))
  return [...inside, ...ends].reduce<ForBoth<Millimetres>>(
    (most, seen) => ({ a: larger(most.a, seen.a), b: larger(most.b, seen.b) }),
    ends[0] ?? over(agreed, from),
  )
}
