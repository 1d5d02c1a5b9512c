import type { Shape } from './drawing.ts'
import type { Frame } from './frame.ts'
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
