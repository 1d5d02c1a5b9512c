import type { HatchShape, Point } from './drawing.ts'

/** The marks that fill a hatched box, all inside it: lines for household a, dots for household b. */
export type HatchMarks = {
  readonly lines: readonly { readonly from: Point; readonly to: Point; readonly width: number }[]
  readonly dots: readonly { readonly centre: Point; readonly radius: number }[]
}

const lineSpacing = 5
const dotSpacing = 6
const dotRadius = 1

/** The same marks for every reader of the drawing, so that paper and screen show one pattern. */
export function hatchMarks(box: HatchShape): HatchMarks {
  return box.household === 'a' ? { lines: diagonals(box), dots: [] } : { lines: [], dots: dots(box) }
}

/** Lines rising to the right, clipped to the box: each begins on the left or bottom edge and ends on the top or right. */
function diagonals({ x, y, width, height }: HatchShape): HatchMarks['lines'] {
  const count = Math.ceil((width + height) / lineSpacing)
  return Array.from({ length: Math.max(0, count - 1) }, (_, index) => {
    const reach = (index + 1) * lineSpacing
    const from = reach <= height ? { x, y: y + reach } : { x: x + reach - height, y: y + height }
    const to = reach <= width ? { x: x + reach, y } : { x: x + width, y: y + reach - width }
    return { from, to, width: 1 }
  })
}

function dots({ x, y, width, height }: HatchShape): HatchMarks['dots'] {
  const rows = Math.max(1, Math.floor(height / (dotSpacing / 2)) - 1)
  const columns = Math.max(0, Math.floor(width / dotSpacing))
  return Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (_, column) => ({
      centre: {
        x: x + (column + (row % 2 === 0 ? 0.25 : 0.75)) * dotSpacing,
        y: y + ((row + 1) * height) / (rows + 1),
      },
      radius: dotRadius,
    })),
  ).flat()
}
