import type { Drawing, Shape } from '../drawing/drawing.ts'
import { type HatchMarks, hatchMarks } from '../drawing/hatchMarks.ts'
import { patternMarks } from '../drawing/patternMarks.ts'
import { shortened } from './breakLines.ts'
import type { Faces } from './faces.ts'
import { box, type Mark } from './mark.ts'
import type { Piece } from './paginate.ts'

/** The drawing as one piece: one unit is one point, smaller only where it would not fit in the column. */
export function drawingPiece(
  drawing: Pick<Drawing, 'width' | 'height' | 'shapes'>,
  faces: Faces,
  width: number,
  columnHeight: number,
): Piece {
  const factor = Math.min(1, width / drawing.width, columnHeight / drawing.height)
  return {
    height: drawing.height * factor,
    before: 8,
    keepWithNext: false,
    marks: drawing.shapes.flatMap((shape) => marksOf(shape, faces)).map((mark) => scaled(mark, factor)),
  }
}

/** The larger drawings of single items, each sheet a piece, so that a page turns between two of them. */
export function detailPieces(drawing: Drawing, faces: Faces, width: number, columnHeight: number): Piece[] {
  return (drawing.details ?? []).map((detail) => ({
    ...drawingPiece(detail, faces, width, columnHeight),
    before: 16,
  }))
}

function marksOf(shape: Shape, faces: Faces): Mark[] {
  switch (shape.kind) {
    case 'polyline':
    case 'polygon':
    case 'circle':
      return [shape]
    case 'arc': {
      const steps = Math.max(2, Math.ceil((shape.to - shape.from) / 0.06))
      const points = Array.from({ length: steps + 1 }, (_, step) => {
        const angle = shape.from + ((shape.to - shape.from) * step) / steps
        return {
          x: shape.centre.x + shape.radius * Math.cos(angle),
          y: shape.centre.y + shape.radius * Math.sin(angle),
        }
      })
      return [{ kind: 'polyline', points, stroke: shape.stroke }]
    }
    case 'hatch':
      return patternOf(hatchMarks(shape))
    case 'patterned':
      return [
        ...shape.boxes.map(
          ({ x, y, width, height }): Mark => ({
            kind: 'polygon',
            points: box(x, y, width, height),
            fill: shape.household === 'a' ? 'soft-a' : 'soft-b',
          }),
        ),
        ...patternOf(patternMarks(shape)),
      ]
    case 'text': {
      const weight = shape.bold ? 'semibold' : 'regular'
      // The drawing reckons widths on the wide side; a text that is wider all the same is set smaller, then cut.
      const natural = faces.widthOf(shape.text, shape.size, weight)
      const size =
        natural > shape.room ? Math.max(shape.size * 0.75, (shape.size * shape.room) / natural) : shape.size
      const text = shortened(shape.text, Math.max(shape.room, size) + 0.01, (part) =>
        faces.widthOf(part, size, weight),
      )
      const width = faces.widthOf(text, size, weight)
      const x = shape.at.x - { start: 0, middle: width / 2, end: width }[shape.anchor]
      return [{ kind: 'text', text, at: { x, y: shape.at.y }, size, weight, ink: shape.ink }]
    }
  }
}

function patternOf({ lines, dots }: HatchMarks): Mark[] {
  return [
    ...lines.map(
      (line): Mark => ({
        kind: 'polyline',
        points: [line.from, line.to],
        stroke: { ink: 'a', width: line.width },
      }),
    ),
    ...dots.map((dot): Mark => ({ kind: 'circle', ...dot, fill: 'b' })),
  ]
}

function scaled(mark: Mark, by: number): Mark {
  if (by === 1) return mark
  const point = ({ x, y }: { x: number; y: number }) => ({ x: x * by, y: y * by })
  const stroke = <Stroked extends { width: number; dash?: readonly number[] }>(one: Stroked) => ({
    ...one,
    width: one.width * by,
    ...(one.dash && { dash: one.dash.map((length) => length * by) }),
  })
  switch (mark.kind) {
    case 'text':
      return { ...mark, at: point(mark.at), size: mark.size * by }
    case 'circle':
      return {
        ...mark,
        centre: point(mark.centre),
        radius: mark.radius * by,
        stroke: mark.stroke && stroke(mark.stroke),
      }
    case 'polygon':
      return { ...mark, points: mark.points.map(point), stroke: mark.stroke && stroke(mark.stroke) }
    case 'polyline':
      return { ...mark, points: mark.points.map(point), stroke: stroke(mark.stroke) }
  }
}
