import { inMillimetres } from '../core/amounts/length.ts'
import type { PlacedLine } from '../core/boundary/placedLine.ts'
import type { Point, Shape } from './drawing.ts'
import type { DrawnLimit } from './drawnMore.ts'
import type { Frame } from './frame.ts'
import type { Ground } from './ground.ts'

/** A height limit over the ground that it is measured from, in millimetres; a limit over each household's own ground has two. */
export type LimitLine = {
  readonly index: number
  readonly ink: 'ink' | 'a' | 'b'
  readonly points: readonly { readonly at: number; readonly height: number }[]
}

export const limitDash = [7, 3.5]

export function limitLines(
  limits: readonly DrawnLimit[],
  placed: PlacedLine,
  frame: Frame,
  ground: Ground,
  bends: (from: number, to: number) => readonly number[],
): readonly LimitLine[] {
  return limits.flatMap((limit): LimitLine[] => {
    const from = Math.max(frame.from, limit.from ?? frame.from)
    const to = Math.min(frame.to, limit.to ?? frame.to)
    // A zone that ends where this drawing begins has nothing to do with it.
    const [start, end] = [inMillimetres(placed.start), inMillimetres(placed.end)]
    if (!(from < to && Math.max(from, start) < Math.min(to, end))) return []
    const over = (ink: LimitLine['ink'], side: DrawnLimit['measuredFrom']): LimitLine => ({
      index: limit.index,
      ink,
      points: bends(from, to).map((at) => ({ at, height: ground.measured(side, at) + limit.height })),
    })
    return limit.measuredFrom === '' ? [over('a', 'a'), over('b', 'b')] : [over('ink', limit.measuredFrom)]
  })
}

export function limitMarks(
  lines: readonly LimitLine[],
  point: (at: number, height: number) => Point,
): readonly Shape[] {
  return lines.map(
    ({ ink, points }): Shape => ({
      kind: 'polyline',
      points: points.map(({ at, height }) => point(at, height)),
      stroke: { ink, width: 1, dash: limitDash },
    }),
  )
}
