import type { BuiltFence } from './builtFence.ts'
import type { Point, Shape, Stroke } from './drawing.ts'
import { type Frame, heldInside } from './frame.ts'

export const bandStroke: Stroke = { ink: 'quiet', width: 0.6, dash: [4, 2.5] }
export const holeStroke: Stroke = { ink: 'ink', width: 0.8, dash: [2, 1.6] }

/** The stated error of the line: the strip in which it may lie. */
export function errorBand(frame: Frame, line: number, reach: number): readonly Shape[] {
  if (!(reach > 0)) return []
  const edge = (y: number): Shape => ({
    kind: 'polyline',
    points: [
      { x: frame.left, y },
      { x: frame.right, y },
    ],
    stroke: bandStroke,
  })
  return [
    {
      kind: 'polygon',
      points: [
        { x: frame.left, y: line - reach },
        { x: frame.right, y: line - reach },
        { x: frame.right, y: line + reach },
        { x: frame.left, y: line + reach },
      ],
      fill: 'sheet',
    },
    edge(line - reach),
    edge(line + reach),
  ]
}

/** Holes from above: circles where both directions are to one scale, else stretched across the line as everything is. */
export function holesFromAbove(
  { posts }: BuiltFence,
  frame: Frame,
  acrossUnits: number,
  onFence: (place: number) => Point,
): readonly Shape[] {
  return posts.flatMap(({ at, hole }): Shape[] => {
    if (!(hole > 0)) return []
    const centre = onFence(at)
    const [along, across] = [(hole / 2) * frame.unitsPerMillimetre, (hole / 2) * acrossUnits]
    if (Math.abs(along - across) < 1e-9)
      return [{ kind: 'circle', centre, radius: along, fill: 'sheet', stroke: holeStroke }]
    const points = Array.from({ length: 32 }, (_, step) => ({
      x: centre.x + along * Math.cos((step * Math.PI) / 16),
      y: centre.y + across * Math.sin((step * Math.PI) / 16),
    })).map((point) => heldInside(frame, point))
    return [{ kind: 'polygon', points, fill: 'sheet', stroke: holeStroke }]
  })
}
