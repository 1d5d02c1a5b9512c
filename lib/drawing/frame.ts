import { inMillimetres } from '../core/amounts/length.ts'
import type { PlacedLine } from '../core/boundary/placedLine.ts'

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

export function frameOf(placed: PlacedLine, width: number): Frame {
  const [from, to] = [inMillimetres(placed.start), inMillimetres(placed.end)]
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
