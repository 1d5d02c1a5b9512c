import type { Point } from '../drawing/drawing.ts'
import type { Mark, TextMark } from './mark.ts'

/**
 * The box around marks: left, top, right and bottom, in points from the page's top left corner. `widthOf` gives the width
 * of a text in points. Marks are taken as they stand, none set at an angle. Four zeros where nothing is painted.
 */
export function markBox(
  marks: readonly Mark[],
  widthOf: (mark: TextMark) => number,
): readonly [number, number, number, number] {
  const box: [number, number, number, number] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const mark of marks) {
    for (const { x, y } of cornersOf(mark, widthOf)) {
      box[0] = Math.min(box[0], x)
      box[1] = Math.min(box[1], y)
      box[2] = Math.max(box[2], x)
      box[3] = Math.max(box[3], y)
    }
  }
  return box[0] === Infinity ? [0, 0, 0, 0] : box
}

/** Points that the box of a mark has to hold, the width of its stroke with them. */
function cornersOf(mark: Mark, widthOf: (mark: TextMark) => number): Point[] {
  if (mark.kind === 'text') {
    const { at, size } = mark
    return [
      { x: at.x, y: at.y - size },
      { x: at.x + widthOf(mark), y: at.y + size / 4 },
    ]
  }
  const half = (mark.stroke?.width ?? 0) / 2
  const [points, reach] = mark.kind === 'circle' ? [[mark.centre], mark.radius + half] : [mark.points, half]
  return points.flatMap(({ x, y }) => [
    { x: x - reach, y: y - reach },
    { x: x + reach, y: y + reach },
  ])
}
