import type { ScaleLinear } from 'd3-scale'
import type { TextShape } from '../drawing.ts'
import { fitted, textWidth } from '../textRoom.ts'

/** A place on an axis, in units of the drawing, and what it is called. */
export type Tick = { readonly at: number; readonly text: string }

/**
 * The round amounts on an axis, about so many.
 *
 * @param words what all of them together are called: how one is written depends on the others
 */
export function amountTicks(
  scale: ScaleLinear<number, number>,
  count: number,
  words: (places: readonly bigint[]) => readonly string[],
): Tick[] {
  // Nothing is smaller than the smallest unit.
  const places = scale.ticks(count).filter(Number.isInteger)
  const texts = words(places.map(BigInt))
  return places.map((place, at) => ({ at: scale(place), text: texts[at] ?? '' }))
}

/** From where to where along the drawing the labels of an axis may reach. */
export type LabelRoom = { readonly from: number; readonly to: number; readonly size: number }

const mostTicks = 6

/**
 * How many ticks to ask for, so that no label touches the next: the most that fit, or one.
 *
 * @param ticksOf about so many round places, in order
 */
export function countThatFits(ticksOf: (count: number) => readonly Tick[], room: LabelRoom): number {
  for (let count = mostTicks; count > 1; count -= 1) {
    const ticks = ticksOf(count)
    if (ticks.length > 0 && withoutTouching(ticks, room).length === ticks.length) return count
  }
  return 1
}

/** How many ticks to ask for, so that as many as can be have their label: where it is long, every other one has. */
export function countWithMostLabels(ticksOf: (count: number) => readonly Tick[], room: LabelRoom): number {
  const counts = Array.from({ length: mostTicks }, (_, less) => mostTicks - less)
  const named = (count: number) => withoutTouching(ticksOf(count), room).length
  return counts.reduce((best, count) => (named(count) >= named(best) ? count : best), mostTicks)
}

/** The labels of an axis that lies along the drawing, on the base line `y`. One that would touch another is left out. */
export function labelsBelow(ticks: readonly Tick[], y: number, room: LabelRoom): TextShape[] {
  return withoutTouching(ticks, room).map(({ at, text }) => ({
    kind: 'text',
    text,
    at: { x: at, y },
    anchor: 'middle',
    size: room.size,
    ink: 'quiet',
    room: textWidth(text, room.size) + 1,
  }))
}

/** Labels with their middles, moved in from the edges; each that touches the one before it is left out. */
function withoutTouching(ticks: readonly Tick[], { from, to, size }: LabelRoom): Tick[] {
  const kept: Tick[] = []
  let free = Number.NEGATIVE_INFINITY
  for (const tick of ticks) {
    const text = fitted(tick.text, size, to - from)
    const half = textWidth(text, size) / 2
    const at = Math.max(from + half, Math.min(tick.at, to - half))
    if (at - half < free) continue
    kept.push({ at, text })
    free = at + half + size
  }
  return kept
}
