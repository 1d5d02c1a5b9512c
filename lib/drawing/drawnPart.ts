import type { ItemAt } from '../core/takeoff/postLayout.ts'

/** What a part of the drawing stands for, by its place in the notebook's lists or, for a post, in the take-off's. */
export type PartOf =
  | { readonly kind: 'section' | 'gate' | 'station'; readonly index: number }
  | { readonly kind: 'post'; readonly index: number; readonly item: ItemAt }

/** In units of the drawing. */
export type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number }

/**
 * A part that can be named and opened: where it lies on the drawing. Later parts lie over earlier ones. A part without a
 * box has a name only: its neighbours stand too close for a finger.
 */
export type DrawnPart = { readonly of: PartOf; readonly name: string; readonly boxes: readonly Box[] }

/** The least side of a box, in units: over 24 px at the scale at which the smallest text is still 11 px high. */
export const leastTarget = 20

/** The box from `left` to `right`, widened about its middle where it would be too small to hit, and inside the drawing. */
export function targetBox(left: number, right: number, top: number, bottom: number, width: number): Box {
  const wide = Math.max(leastTarget, right - left)
  const high = Math.max(leastTarget, bottom - top)
  const x = Math.max(0, Math.min((left + right) / 2 - wide / 2, width - wide))
  return { x, y: (top + bottom) / 2 - high / 2, width: Math.min(wide, width), height: high }
}
