/** A label that wants to stand over a place. */
export type WantedLabel<Label> = { readonly label: Label; readonly centre: number; readonly width: number }
/** Row 0 is nearest to the drawing. `x` is the middle of the label: `centre`, moved only as far as the edges ask. */
export type PlacedLabel<Label> = WantedLabel<Label> & { readonly row: number; readonly x: number }

/**
 * Puts labels into rows so that no two overlap: each goes into the nearest row that has room at its place. What finds
 * none in `rows` rows is left out and counted.
 */
export function labelRows<Label>(
  wanted: readonly WantedLabel<Label>[],
  edges: { readonly from: number; readonly to: number },
  rows: number,
  gap = 4,
): { readonly placed: readonly PlacedLabel<Label>[]; readonly leftOut: number; readonly rows: number } {
  const taken: { from: number; to: number }[][] = Array.from({ length: rows }, () => [])
  const placed: PlacedLabel<Label>[] = []
  for (const one of wanted) {
    const half = one.width / 2
    const x = Math.min(Math.max(one.centre, edges.from + half), Math.max(edges.from + half, edges.to - half))
    const box = { from: x - half - gap, to: x + half + gap }
    const row = taken.findIndex((boxes) =>
      boxes.every(({ from, to }) => box.to - gap <= from || box.from + gap >= to),
    )
    if (row < 0) continue
    taken[row]?.push(box)
    placed.push({ ...one, x, row })
  }
  const used = placed.reduce((most, { row }) => Math.max(most, row + 1), 0)
  return { placed, leftOut: wanted.length - placed.length, rows: used }
}
