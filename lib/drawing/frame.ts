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

const margin = 10

export function frameOf(placed: PlacedLine, width: number): Frame {
  const [from, to] = [inMillimetres(placed.start), inMillimetres(placed.end)]
  const [left, right] = [margin, width - margin]
  const unitsPerMillimetre = to > from ? (right - left) / (to - from) : 0
  return {
    width,
    left,
    right,
    from,
    to,
    unitsPerMillimetre,
    toX: (place) => left + (place - from) * unitsPerMillimetre,
  }
}
