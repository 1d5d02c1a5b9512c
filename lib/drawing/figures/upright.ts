import type { Shape, Stroke } from '../drawing.ts'

/** A line from top to bottom. */
export function upright(x: number, from: number, to: number, stroke: Stroke): Shape {
  return {
    kind: 'polyline',
    points: [
      { x, y: from },
      { x, y: to },
    ],
    stroke,
  }
}

/** A line from left to right. */
export function level(y: number, from: number, to: number, stroke: Stroke): Shape {
  return {
    kind: 'polyline',
    points: [
      { x: from, y },
      { x: to, y },
    ],
    stroke,
  }
}
