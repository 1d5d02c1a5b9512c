import { inMillimetres } from '../core/amounts/length.ts'
import type { PlacedLine } from '../core/boundary/placedLine.ts'
import type { Point } from './drawing.ts'

/** Where the line lies on the drawing: the same in plan and in elevation, so that one stands over the other. */
export type Frame = {
  readonly width: number
  readonly left: number
  readonly right: number
  /** Millimetres from the start of the line. */
  readonly from: number
  readonly to: number
  readonly unitsPerMillimetre: number
  readonly toX: (millimetres: number) => number
}

export const margin = 10

/** The whole line, and what stands past its ends: a gate's post, or one that was measured there. */
export function frameOf(
  placed: PlacedLine,
  width: number,
  posts: readonly { readonly at: number }[] = [],
): Frame {
  const from = posts.reduce((first, { at }) => Math.min(first, at), inMillimetres(placed.start))
  const to = posts.reduce((last, { at }) => Math.max(last, at), inMillimetres(placed.end))
  return frameFrom(from, to, width, to > from ? (width - 2 * margin) / (to - from) : 0)
}

/** A frame at a scale of its own; it need not reach the right edge. */
export function frameFrom(from: number, to: number, width: number, unitsPerMillimetre: number): Frame {
  const left = margin
  const right = Math.min(width - margin, left + (to - from) * unitsPerMillimetre)
  return {
    width,
    left,
    right: unitsPerMillimetre > 0 ? right : width - margin,
    from,
    to,
    unitsPerMillimetre,
    toX: (place) => left + (place - from) * unitsPerMillimetre,
  }
}

/** The point, moved in from beyond the drawing's edges: a post can be typed wider than the whole line. */
export function heldInside(frame: Frame, { x, y }: Point): Point {
  return { x: Math.max(0, Math.min(x, frame.width)), y }
}
