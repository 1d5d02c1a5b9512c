import type { DrawingNote } from '../core/boundary/drawingNote.ts'
import type { Household } from '../core/people/household.ts'
import type { DrawnPart } from './drawnPart.ts'

/**
 * A drawing as plain data: x to the right, y down, from 0 to `width` and `height`, in units of the drawing. Text sizes
 * are in the same units, so ask for the width at which it will be seen: about 360 for a phone, the points of the text
 * column for paper. Shapes are painted in order.
 */
export type Drawing = {
  readonly width: number
  readonly height: number
  readonly shapes: readonly Shape[]
  /** What could not be drawn, or only in part; worded by `lib/words/summary/drawingNoteText.ts`. */
  readonly notes: readonly DrawingNote[]
  readonly scale: DrawingScale
  /** What can be named and opened, in the order of reading. */
  readonly parts: readonly DrawnPart[]
  /** Larger drawings of single items, where they were asked for. */
  readonly details?: readonly Drawing[]
}

/** How the drawing stands to the ground; 0 millimetres a unit where nothing could be drawn to scale. */
export type DrawingScale = {
  /** Along the line, in plan and in elevation. */
  readonly millimetresPerUnit: number
  /** How many times wider than to scale setbacks are drawn; 1 is to scale. */
  readonly setbacksDrawnWider: number
  /** How many times higher than to scale heights are drawn; 1 is to scale. */
  readonly heightsDrawnHigher: number
}

export type Point = { readonly x: number; readonly y: number }

/** What a shape is drawn with. The reader of the drawing gives each its colour: `a` is plum, `b` is ochre. */
export type Ink = 'ink' | 'quiet' | 'rule' | 'sheet' | Household
/** `soft` variants are the pale grounds of the two households. */
export type Fill = Ink | 'soft-a' | 'soft-b'

export type Stroke = { readonly ink: Ink; readonly width: number; readonly dash?: readonly number[] }

export type Shape =
  | { readonly kind: 'polyline'; readonly points: readonly Point[]; readonly stroke: Stroke }
  | {
      readonly kind: 'polygon'
      readonly points: readonly Point[]
      readonly fill?: Fill
      readonly stroke?: Stroke
    }
  | {
      readonly kind: 'arc'
      readonly centre: Point
      readonly radius: number
      /** Radians, clockwise on screen from the direction of x; from < to, at most a full turn apart. */
      readonly from: number
      readonly to: number
      readonly stroke: Stroke
    }
  | {
      readonly kind: 'circle'
      readonly centre: Point
      readonly radius: number
      readonly fill?: Fill
      readonly stroke?: Stroke
    }
  | TextShape
  | HatchShape
  | PatternedShape

export type TextShape = {
  readonly kind: 'text'
  readonly text: string
  /** Where the base line begins, has its middle, or ends. */
  readonly at: Point
  readonly anchor: 'start' | 'middle' | 'end'
  readonly size: number
  readonly bold?: boolean
  readonly ink: Ink
  /** The room the text may take, in units: set it smaller where the face is wider than was reckoned. */
  readonly room: number
}

/** A box filled with a household's pattern: diagonal lines for a, dots for b. `hatchMarks` gives the marks. */
export type HatchShape = {
  readonly kind: 'hatch'
  readonly household: Household
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/**
 * Boxes that touch or not, filled with a household's pale ground and one pattern that runs on from box to box.
 * `patternMarks` gives the marks on the ground.
 */
export type PatternedShape = {
  readonly kind: 'patterned'
  readonly household: Household
  readonly boxes: readonly Box[]
}

export type Box = {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}
