import type { Shape } from './drawing.ts'
import type { Frame } from './frame.ts'
import { smallText } from './part.ts'
import { fitted } from './textRoom.ts'

export const titleHeight = 18

export function title(text: string, frame: Frame, top: number): Shape {
  const at = { x: frame.left, y: top + 11 }
  return {
    kind: 'text',
    text: fitted(text, 10.5, frame.right - frame.left),
    at,
    anchor: 'start',
    size: 10.5,
    bold: true,
    ink: 'ink',
    room: frame.right - frame.left,
  }
}

/** In plain letters, right under a title. */
export function subtitle(text: string, frame: Frame, top: number): Shape {
  const room = frame.right - frame.left
  return {
    kind: 'text',
    text: fitted(text, smallText, room),
    at: { x: frame.left, y: top + 6 },
    anchor: 'start',
    size: smallText,
    ink: 'quiet',
    room,
  }
}
