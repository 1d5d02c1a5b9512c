import type { PostKind } from '../core/takeoff/runEdges.ts'
import type { Point, Shape, Stroke } from './drawing.ts'

/** In the order of the key. */
export const postKinds: readonly PostKind[] = ['line', 'end', 'corner', 'gate', 'brace']

const size = 2.7
const stroke: Stroke = { ink: 'ink', width: 1.1 }

/** A post from above: its kind is told by the form of the sign, not by a colour. Not to scale. */
export function postSign(kind: PostKind, { x, y }: Point): readonly Shape[] {
  switch (kind) {
    case 'line':
      return [{ kind: 'circle', centre: { x, y }, radius: 2.3, fill: 'ink' }]
    case 'end':
      return [polygon([-1, -1, 1, -1, 1, 1, -1, 1], size * 0.85, { x, y }, 'ink')]
    case 'corner':
      return [polygon([0, -1, 1, 0, 0, 1, -1, 0], size * 1.35, { x, y }, 'ink')]
    case 'gate':
      return [polygon([0, -1.1, 1.1, 0.8, -1.1, 0.8], size * 1.15, { x, y }, 'sheet')]
    case 'brace':
      return [
        { kind: 'circle', centre: { x, y }, radius: 2.4, fill: 'sheet', stroke },
        {
          kind: 'polyline',
          points: [
            { x: x - size * 1.2, y: y + size * 1.2 },
            { x: x + size * 1.2, y: y - size * 1.2 },
          ],
          stroke,
        },
      ]
  }
}

function polygon(corners: readonly number[], by: number, at: Point, fill: 'ink' | 'sheet'): Shape {
  const points: Point[] = []
  for (let index = 0; index < corners.length; index += 2)
    points.push({ x: at.x + (corners[index] ?? 0) * by, y: at.y + (corners[index + 1] ?? 0) * by })
  return { kind: 'polygon', points, fill, stroke }
}
