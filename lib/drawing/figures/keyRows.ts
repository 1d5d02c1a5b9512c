import type { Household } from '../../core/people/household.ts'
import type { Shape } from '../drawing.ts'
import { linesUpTo, textWidth } from '../textRoom.ts'

/** What a sign in a figure means. */
export type KeyEntry = { readonly sign: Household | 'line' | 'dashes' | 'due' | 'met'; readonly text: string }

/** A long name keeps the amount that follows it. */
const mostLines = 3

/** Each sign beside its meaning, in as many rows as the width asks for. */
export function keyRows(
  entries: readonly KeyEntry[],
  width: number,
  size: number,
): { readonly shapes: readonly Shape[]; readonly bottom: number } {
  const shapes: Shape[] = []
  const [row, line, signWidth] = [size * 1.5, size * 1.25, size * 1.7]
  const room = width - signWidth - size / 2 - 2
  let [x, y, next] = [1, 0, 0]
  for (const { sign, text } of entries) {
    const lines = linesUpTo(mostLines, text, size, room)
    const whole = signWidth + size / 2 + Math.max(...lines.map((one) => textWidth(one, size)))
    if (x > 1 && x + whole > width) [x, y] = [1, next]
    const textX = x + signWidth + size / 2
    shapes.push(
      ...signShapes(sign, x, y + size * 0.7, signWidth, size),
      ...lines.map(
        (shown, at): Shape => ({
          kind: 'text',
          text: shown,
          at: { x: textX, y: y + size * 1.05 + line * at },
          anchor: 'start',
          size,
          ink: 'ink',
          room: width - textX,
        }),
      ),
    )
    next = Math.max(next, y + row + line * (lines.length - 1))
    x += whole + size * 1.4
  }
  return { shapes, bottom: next }
}

function signShapes(sign: KeyEntry['sign'], x: number, middle: number, width: number, size: number): Shape[] {
  const half = size * 0.42
  if (sign === 'line' || sign === 'dashes') {
    const points = [
      { x, y: middle },
      { x: x + width, y: middle },
    ]
    return [{ kind: 'polyline', points, stroke: sign === 'line' ? sumStroke : againstStroke }]
  }
  if (sign === 'due' || sign === 'met') return [dueShape(x + width / 2, middle, size, sign === 'met')]
  const box = { x, y: middle - half, width, height: 2 * half }
  return [{ kind: 'patterned', household: sign, boxes: [box] }, frameOf(box)]
}

export const sumStroke = { ink: 'ink', width: 1.8 } as const
export const againstStroke = { ink: 'ink', width: 1.3, dash: [6, 3, 1.5, 3] } as const

/** The thin frame of a patterned box. */
export function frameOf({
  x,
  y,
  width,
  height,
}: {
  x: number
  y: number
  width: number
  height: number
}): Shape {
  return {
    kind: 'polygon',
    points: [
      { x, y },
      { x: x + width, y },
      { x: x + width, y: y + height },
      { x, y: y + height },
    ],
    stroke: { ink: 'ink', width: 0.8 },
  }
}

/** A day on which something is due: a stake in the ground; filled once it was met. */
export function dueShape(x: number, middle: number, size: number, met: boolean): Shape {
  const [wide, high] = [size * 0.28, size * 0.42]
  return {
    kind: 'polygon',
    points: [
      { x: x - wide, y: middle - high },
      { x: x + wide, y: middle - high },
      { x: x + wide, y: middle + high * 0.3 },
      { x, y: middle + high },
      { x: x - wide, y: middle + high * 0.3 },
    ],
    fill: met ? 'ink' : 'sheet',
    stroke: { ink: 'ink', width: 1.1 },
  }
}
