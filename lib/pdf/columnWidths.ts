/** What one column of a table asks for, in points, padding left out. */
export type ColumnWish = {
  /** Its widest cell on one line. */
  readonly natural: number
  /** Its widest word. */
  readonly least: number
  readonly figure: boolean
}

/** No column of words claims more than this at first, and no word or figure forces a column wider than these. */
const [widestNatural, widestWord, widestFigure] = [240, 96, 118]

/**
 * Widths that add to `width`. Figures get the room they need, so that none is cut; words share the rest by what they
 * would take on one line.
 */
export function columnWidths(wishes: readonly ColumnWish[], width: number): number[] {
  const least = wishes.map((wish) =>
    wish.figure ? Math.min(wish.least, widestFigure) : Math.min(wish.least, widestWord),
  )
  const natural = wishes.map((wish, index) =>
    Math.max(
      least[index] ?? 0,
      wish.figure ? Math.min(wish.natural, widestFigure) : Math.min(wish.natural, widestNatural),
    ),
  )
  const [leastSum, naturalSum] = [sum(least), sum(natural)]
  if (naturalSum <= width) {
    const growing = wishes.map((wish) => (wish.figure && wishes.some((one) => !one.figure) ? 0 : 1))
    return natural.map((one, index) => one + ((width - naturalSum) * (growing[index] ?? 0)) / sum(growing))
  }
  if (leastSum >= width) return least.map((one) => (one * width) / leastSum)
  const wanted = natural.map((one, index) => one - (least[index] ?? 0))
  return least.map((one, index) => one + ((width - leastSum) * (wanted[index] ?? 0)) / sum(wanted))
}

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, one) => total + one, 0)
}
