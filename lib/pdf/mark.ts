import type { Fill, Ink, Point, Stroke } from '../drawing/drawing.ts'
import type { Weight } from './faces.ts'
import type { StructureElement, Tag } from './structureElement.ts'

/** One thing on a page, in points from its top left corner, y down; and what it belongs to. */
export type Mark = Shape & Tagged
export type TextMark = TextShape & Tagged

type Tagged = { readonly tag?: Tag | undefined }

type Shape =
  | TextShape
  | {
      readonly kind: 'polyline'
      readonly points: readonly Point[]
      readonly stroke: Stroke
      readonly round?: boolean
    }
  | {
      readonly kind: 'polygon'
      readonly points: readonly Point[]
      readonly fill?: Fill | 'band' | undefined
      readonly stroke?: Stroke | undefined
    }
  | {
      readonly kind: 'circle'
      readonly centre: Point
      readonly radius: number
      readonly fill?: Fill | undefined
      readonly stroke?: Stroke | undefined
    }

type TextShape = {
  readonly kind: 'text'
  readonly text: string
  /** Left end of the base line. */
  readonly at: Point
  readonly size: number
  readonly weight: Weight
  readonly ink: Ink | 'faint'
  /** Degrees, counter-clockwise. */
  readonly angle?: number
}

export function moved(mark: Mark, by: Point): Mark {
  const shift = (point: Point): Point => ({ x: point.x + by.x, y: point.y + by.y })
  switch (mark.kind) {
    case 'text':
      return { ...mark, at: shift(mark.at) }
    case 'circle':
      return { ...mark, centre: shift(mark.centre) }
    case 'polyline':
    case 'polygon':
      return { ...mark, points: mark.points.map(shift) }
  }
}

export function tagged(mark: Mark, tag: Tag | undefined): Mark {
  return { ...mark, tag }
}

/** Paints nothing: holds the place of an element that has nothing to show, such as an empty cell. */
export function emptyMark(tag: StructureElement): Mark {
  return { kind: 'polyline', points: [], stroke: { ink: 'rule', width: 0 }, tag }
}

export function box(x: number, y: number, width: number, height: number): Point[] {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ]
}

export function rule(from: Point, to: Point, ink: Ink = 'rule', width = 0.6): Mark {
  return { kind: 'polyline', points: [from, to], stroke: { ink, width } }
}
