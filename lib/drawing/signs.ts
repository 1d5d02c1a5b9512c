import type { Point, Shape, Stroke } from './drawing.ts'

/** What each kind of line and mark means is said in the key under the drawing. */

/** The draughtsman's boundary: a long dash and two short ones. */
export const boundaryStroke: Stroke = { ink: 'ink', width: 1, dash: [14, 3, 2.5, 3, 2.5, 3] }
export const fenceStroke: Stroke = { ink: 'ink', width: 2 }
export const groundStrokes: { readonly a: Stroke; readonly b: Stroke } = {
  a: { ink: 'a', width: 1.6 },
  b: { ink: 'b', width: 1.6, dash: [5, 2.5] },
}

export function postShape(centre: Point): Shape {
  return { kind: 'circle', centre, radius: 2.1, fill: 'sheet', stroke: { ink: 'ink', width: 1.2 } }
}
