import type { Point, Shape, Stroke } from './drawing.ts'
import { labelRows } from './labelRows.ts'
import { rowHeight, smallText } from './part.ts'
import { textWidth } from './textRoom.ts'

/** From one place on the drawing to another, with the figure that stands on it. */
export type Dimension = { readonly from: number; readonly to: number; readonly text: string }

export const dimensionStroke: Stroke = { ink: 'quiet', width: 0.6 }

/** The short stroke across the end of a dimension line. */
export function obliqueTick({ x, y }: Point): Shape {
  return {
    kind: 'polyline',
    points: [
      { x: x - 2.5, y: y + 2.5 },
      { x: x + 2.5, y: y - 2.5 },
    ],
    stroke: { ink: 'ink', width: 0.9 },
  }
}

/**
 * One row of dimensions in order along the line: a thin line with oblique ticks, the figure over it; below it where the
 * dimension is too short for its figure. A dimension that begins before the one before it ends is left out.
 */
export function dimensionRow(
  dimensions: readonly Dimension[],
  edges: { readonly from: number; readonly to: number },
  top: number,
): { readonly shapes: readonly Shape[]; readonly bottom: number; readonly leftOut: number } {
  const chain: Dimension[] = []
  for (const one of dimensions)
    if (one.from >= (chain.at(-1)?.to ?? Number.NEGATIVE_INFINITY) - 0.01) chain.push(one)
  if (chain.length === 0) return { shapes: [], bottom: top, leftOut: dimensions.length }
  const y = top + rowHeight + 2
  const fits = ({ from, to, text }: Dimension) => textWidth(text, smallText) + 4 <= to - from
  const below = labelRows(
    chain
      .filter((one) => one.text !== '' && !fits(one))
      .map((one) => ({
        label: one,
        centre: (one.from + one.to) / 2,
        width: textWidth(one.text, smallText),
      })),
    edges,
    2,
  )
  const ends = [...new Set(chain.flatMap(({ from, to }) => [from, to]))]
  return {
    shapes: [
      ...chain.map(
        ({ from, to }): Shape => ({
          kind: 'polyline',
          points: [
            { x: from, y },
            { x: to, y },
          ],
          stroke: dimensionStroke,
        }),
      ),
      ...ends.map((x) => obliqueTick({ x, y })),
      ...chain.filter(fits).map(({ from, to, text }) => figure(text, (from + to) / 2, y - 3)),
      ...below.placed.flatMap(({ label, x, row, width, centre }): Shape[] => {
        const base = y + 12 + row * rowHeight
        const leader: Shape = {
          kind: 'polyline',
          points: [
            { x: centre, y },
            { x: centre, y: base - 8 },
          ],
          stroke: { ink: 'quiet', width: 0.5, dash: [1, 2] },
        }
        return [leader, { ...figure(label.text, x, base), room: width }]
      }),
    ],
    bottom: y + 4 + below.rows * rowHeight,
    leftOut: dimensions.length - chain.length + below.leftOut,
  }
}

function figure(text: string, x: number, y: number) {
  return {
    kind: 'text' as const,
    text,
    at: { x, y },
    anchor: 'middle' as const,
    size: smallText,
    ink: 'ink' as const,
    room: textWidth(text, smallText),
  }
}

/**
 * Alike dimensions beside one another become one, worded together, where their figures would not fit one by one; their
 * ticks stay.
 */
export function gatheredDimensions(
  dimensions: readonly Dimension[],
  together: (count: number, text: string) => string,
): { readonly dimensions: readonly Dimension[]; readonly ticks: readonly number[] } {
  const gathered: { from: number; to: number; text: string; count: number }[] = []
  const ticks: number[] = []
  for (const one of dimensions) {
    const last = gathered.at(-1)
    const alike = last?.text === one.text && Math.abs(last.to - one.from) < 0.01
    const fits = textWidth(one.text, smallText) + 4 <= one.to - one.from
    if (last && alike && !fits) {
      ticks.push(one.from)
      last.to = one.to
      last.count += 1
    } else gathered.push({ ...one, count: 1 })
  }
  return {
    dimensions: gathered.map(({ from, to, text, count }) => ({
      from,
      to,
      text: count === 1 ? text : together(count, text),
    })),
    ticks,
  }
}
