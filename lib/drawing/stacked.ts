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
    shapes: placed.flatMap(({ drawing, at }) => drawing.shapes.map((shape) => moved(shape, 0, at))),
    notes: drawings.flatMap(({ notes }) => notes),
    scale: first?.scale ?? { millimetresPerUnit: 0, setbacksDrawnWider: 1, heightsDrawnHigher: 1 },
    parts: placed.flatMap(({ drawing, at }) =>
      drawing.parts.map((part) => ({ ...part, boxes: part.boxes.map((box) => ({ ...box, y: box.y + at })) })),
    ),
  }
}

const gap = 8
const gapAside = 14

/** Narrow drawings side by side wherever two or more of them fit into a width; their order stays. */
export function inRows(drawings: readonly Drawing[], width: number): readonly Drawing[] {
  const rows: Drawing[][] = []
  for (const drawing of drawings) {
    const row = rows.at(-1)
    const taken = row?.reduce((sum, one) => sum + one.width + gapAside, 0) ?? width
    if (row && taken + drawing.width <= width) row.push(drawing)
    else rows.push([drawing])
  }
  return rows.flatMap((row) => (row.length === 1 ? row : [beside(row)]))
}

function beside(drawings: readonly Drawing[]): Drawing {
  let left = 0
  const placed = drawings.map((drawing) => {
    const at = left
    left += drawing.width + gapAside
    return { drawing, at }
  })
  return {
    width: left - gapAside,
    height: Math.max(...drawings.map(({ height }) => height)),
    shapes: placed.flatMap(({ drawing, at }) => drawing.shapes.map((shape) => moved(shape, at, 0))),
    notes: drawings.flatMap(({ notes }) => notes),
    scale: drawings[0]?.scale ?? { millimetresPerUnit: 0, setbacksDrawnWider: 1, heightsDrawnHigher: 1 },
    parts: placed.flatMap(({ drawing, at }) =>
      drawing.parts.map((part) => ({ ...part, boxes: part.boxes.map((box) => ({ ...box, x: box.x + at })) })),
    ),
  }
}

function moved(shape: Shape, right: number, down: number): Shape {
  const point = ({ x, y }: Point): Point => ({ x: x + right, y: y + down })
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
      return { ...shape, x: shape.x + right, y: shape.y + down }
    case 'patterned':
      return { ...shape, boxes: shape.boxes.map((box) => ({ ...box, x: box.x + right, y: box.y + down })) }
  }
}
