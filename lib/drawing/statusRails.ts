import type { StatusLook } from '../core/agreement/itemStatus.ts'
import type { Shape, Stroke } from './drawing.ts'

/** How each section and gate stands, by its place in the file; a drawing without it shows no status. */
export type DrawnStandings = {
  readonly sections: readonly StatusLook[]
  readonly gates: readonly StatusLook[]
}

/** From the top of the posts to their feet, in units. */
export const railsHeight = 5

const stroke: Stroke = { ink: 'ink', width: 1 }
const openStroke: Stroke = { ink: 'quiet', width: 0.8, dash: [1, 3] }
/** Along the line from one fallen rail to the next, and how much of that it covers. */
const fallenEvery = 11
const fallen = 8

/**
 * A bay of fence as a sign: two posts, between them both rails where both households agreed, one where one did, none but a
 * dotted line where it is open, and rails that have come down where it was changed.
 */
export function statusRails(look: StatusLook, left: number, right: number, top: number): readonly Shape[] {
  const line = (x1: number, y1: number, x2: number, y2: number, by = stroke): Shape => ({
    kind: 'polyline',
    points: [
      { x: x1, y: top + y1 },
      { x: x2, y: top + y2 },
    ],
    stroke: by,
  })
  const posts = [line(left, 0, left, railsHeight), line(right, 0, right, railsHeight)]
  switch (look) {
    case 'agreed':
      return [...posts, line(left, 1, right, 1), line(left, 4, right, 4)]
    case 'one':
      return [...posts, line(left, 4, right, 4)]
    case 'open':
      return [...posts, line(left, 2.5, right, 2.5, openStroke)]
    case 'changed': {
      const room = right - left
      const count = Math.max(1, Math.min(200, Math.floor(room / fallenEvery)))
      const every = room / count
      const rails = Array.from({ length: count }, (_, index) => left + index * every)
      return [...posts, ...rails.map((x) => line(x, 0.5, x + Math.min(fallen, every * 0.75), 4.5))]
    }
  }
}
