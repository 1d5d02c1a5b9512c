import type { Box, PatternedShape } from './drawing.ts'
import type { HatchMarks } from './hatchMarks.ts'

const spacing = 6
const radius = 1.1

/**
 * The marks of a household's pattern in all boxes, none outside of them: lines for a, dots for b. They stand on one grid
 * of the whole drawing, so that no seam is seen where two boxes touch.
 */
export function patternMarks({ household, boxes }: PatternedShape): HatchMarks {
  return household === 'a' ? { lines: boxes.flatMap(linesIn), dots: [] } : { lines: [], dots: dotsIn(boxes) }
}

/** Lines on which x and y add to a multiple of the spacing, as far as they lie in the box. */
function linesIn({ x, y, width, height }: Box): HatchMarks['lines'] {
  return multiples(x + y, x + width + y + height).flatMap((sum) => {
    const [from, to] = [Math.max(x, sum - y - height), Math.min(x + width, sum - y)]
    if (to - from < 0.05) return []
    return [{ from: { x: from, y: sum - from }, to: { x: to, y: sum - to }, width: 1 }]
  })
}

/** Dots that lie in a box from its top to its bottom; at its sides they may reach into the box that goes on there. */
function dotsIn(boxes: readonly Box[]): HatchMarks['dots'] {
  const left = Math.min(...boxes.map(({ x }) => x))
  const right = Math.max(...boxes.map(({ x, width }) => x + width))
  return boxes.flatMap((box) => {
    const [first, last] = [Math.max(box.x, left + radius), Math.min(box.x + box.width, right - radius)]
    return multiples(box.y + radius, box.y + box.height - radius, spacing / 2).flatMap((y) => {
      const shift = Math.round(y / (spacing / 2)) % 2 === 0 ? 0 : spacing / 2
      return multiples(first - shift, last - shift)
        .filter((x) => x + shift < box.x + box.width)
        .map((x) => ({ centre: { x: x + shift, y }, radius }))
    })
  })
}

function multiples(from: number, to: number, of = spacing): number[] {
  const first = Math.ceil(from / of)
  return Array.from(
    { length: Math.max(0, Math.floor(to / of) - first + 1) },
    (_, index) => (first + index) * of,
  )
}
