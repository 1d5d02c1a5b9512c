import type { Drawing, Shape, TextShape } from '../../lib/drawing/drawing.ts'
import { textWidth } from '../../lib/drawing/textRoom.ts'

/** Anything that is drawn: a drawing of the line, or a figure. */
type Drawn = Pick<Drawing, 'width' | 'height' | 'shapes'>

type Box = { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number }

/** The box of a text: capitals reach about 0.75 of the size over the base line, tails 0.25 under it. */
export function boxOf({ text, at, anchor, size }: TextShape): Box {
  const width = textWidth(text, size)
  const left = at.x - { start: 0, middle: width / 2, end: width }[anchor]
  return { left, right: left + width, top: at.y - 0.75 * size, bottom: at.y + 0.25 * size }
}

export function textsOf(drawing: Drawn): TextShape[] {
  return drawing.shapes.filter((shape): shape is TextShape => shape.kind === 'text' && shape.text !== '')
}

/** Each two texts that lie on one another, in words. */
export function overlapping(drawing: Drawn): string[] {
  const placed = textsOf(drawing).map((shape) => ({ text: shape.text, box: boxOf(shape) }))
  return placed.flatMap((one, index) =>
    placed.slice(index + 1).flatMap((other) => {
      const apart =
        one.box.right <= other.box.left ||
        other.box.right <= one.box.left ||
        one.box.bottom <= other.box.top ||
        other.box.bottom <= one.box.top
      return apart ? [] : [`${one.text} / ${other.text}`]
    }),
  )
}

/** Every shape with a point outside of the drawing's own width and height, or with a place that is no number. */
export function outside(drawing: Drawn): Shape[] {
  const off = (value: number, most: number) => !(value >= -0.01 && value <= most + 0.01)
  return drawing.shapes.filter((shape) =>
    pointsOf(shape).some(({ x, y }) => off(x, drawing.width) || off(y, drawing.height)),
  )
}

function pointsOf(shape: Shape): { x: number; y: number }[] {
  switch (shape.kind) {
    case 'polyline':
    case 'polygon':
      return [...shape.points]
    case 'circle':
    case 'arc':
      return [shape.centre]
    case 'hatch':
      return [
        { x: shape.x, y: shape.y },
        { x: shape.x + shape.width, y: shape.y + shape.height },
      ]
    case 'patterned':
      return shape.boxes.flatMap(({ x, y, width, height }) => [
        { x, y },
        { x: x + width, y: y + height },
      ])
    case 'text': {
      const { left, right, top, bottom } = boxOf(shape)
      return [
        { x: left, y: top },
        { x: right, y: bottom },
      ]
    }
  }
}
