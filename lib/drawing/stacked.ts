import type { Drawing, Point, Shape } from './drawing.ts'

/** Drawings of one width under one another, as one. */
export function stacked(drawings: readonly Drawing[]): Drawing {
  const [first] = drawings
  let top = 0
  const placed = drawings.map((drawing) => {
    const at = top
    top += drawing.height + gap
    return { drawing, at }
  })
  return {
    width: Math.max(...drawings.map(({ width }) => width)),
    height: Math.max(0, top - gap),
    shapes: placed.flatMap(({ drawing, at }) => drawing.shapes.map((shape) => lowered(shape, at))),
    notes: drawings.flatMap(({ notes }) => notes),
    scale: first?.scale ?? { millimetresPerUnit: 0, setbacksDrawnWider: 1, heightsDrawnHigher: 1 },
    parts: placed.flatMap(({ drawing, at }) =>
      drawing.parts.map((part) => ({ ...part, boxes: part.boxes.map((box) => ({ ...box, y: box.y + at })) })),
    ),
  }
}

const gap = 8

function lowered(shape: Shape, by: number): Shape {
  const point = ({ x, y }: Point): Point => ({ x, y: y + by })
  switch (shape.kind) {
    case 'polyline':
    case 'polygon':
      return { ...shape, points: shape.points.map(point) }
    case 'arc':
    case 'circle':
      return { ...shape, centre: point(shape.centre) }
    case 'text':
      return { ...shape, at: point(shape.at) }
    case 'hatch':
      return { ...shape, y: shape.y + by }
  }
}
