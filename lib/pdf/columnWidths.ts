/** What one column of a table asks for, in points, padding left out. */
export type ColumnWish = {
  /** Its widest cell on one line. */
  readonly natural: number
  /** Its widest word; of a figure the widest figure, which is never broken while there is room. */
  readonly least: number
  readonly figure: boolean
}

/** No column of words claims more than this at first, and no word forces its column wider than that. */
const [widestNatural, widestWord] = [240, 96]

/**
 * Widths that add to `width`. Figures get the room they need, so that none is cut; words share the rest by what they
 * would take on one line. Where not even that fits, the widest columns give way first.
 */
export function columnWidths(wishes: readonly ColumnWish[], width: number): number[] {
  const least = wishes.map((wish) => (wish.figure ? wish.least : Math.min(wish.least, widestWord)))
  const natural = wishes.map((wish, index) =>
    Math.max(least[index] ?? 0, wish.figure ? wish.natural : Math.min(wish.natural, widestNatural)),
  )
  const [leastSum, naturalSum] = [sum(least), sum(natural)]
  if (naturalSum <= width) {
    const growing = wishes.map((wish) => (wish.figure && wishes.some((one) => !one.figure) ? 0 : 1))
    return natural.map((one, index) => one + ((width - naturalSum) * (growing[index] ?? 0)) / sum(growing))
  }
  if (leastSum >= width) return levelled(least, width)
  const wanted = natural.map((one, index) => one - (least[index] ?? 0))
  return least.map((one, index) => one + ((width - leastSum) * (wanted[index] ?? 0)) / sum(wanted))
}

/** Narrow columns keep what they ask for; all that ask for more than the level get the level. */
function levelled(asked: readonly number[], width: number): number[] {
  const rising = [...asked].sort((left, right) => left - right)
  let rest = width
  for (const [index, one] of rising.entries()) {
    const level = rest / (rising.length - index)
    if (one > level) return asked.map((wish) => Math.min(wish, level))
    rest -= one
  }
  return [...asked]
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, one) => total + one, 0)
}
