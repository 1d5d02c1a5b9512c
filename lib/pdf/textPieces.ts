import type { Ink } from '../drawing/drawing.ts'
import { breakLines } from './breakLines.ts'
import type { Faces, Weight } from './faces.ts'
import type { Piece } from './paginate.ts'
import type { Tag } from './structureElement.ts'

export type TextStyle = {
  readonly size: number
  readonly lineHeight: number
  readonly weight: Weight
  readonly ink: Ink
}

export const styles = {
  title: { size: 21, lineHeight: 26, weight: 'semibold', ink: 'ink' },
  standing: { size: 11, lineHeight: 15, weight: 'semibold', ink: 'quiet' },
  chapter: { size: 14, lineHeight: 18, weight: 'semibold', ink: 'ink' },
  part: { size: 11, lineHeight: 14.5, weight: 'semibold', ink: 'ink' },
  body: { size: 9.5, lineHeight: 13.5, weight: 'regular', ink: 'ink' },
  strong: { size: 9.5, lineHeight: 13.5, weight: 'semibold', ink: 'ink' },
  caption: { size: 9, lineHeight: 12.5, weight: 'semibold', ink: 'quiet' },
  cell: { size: 8.5, lineHeight: 11.5, weight: 'regular', ink: 'ink' },
  cellStrong: { size: 8.5, lineHeight: 11.5, weight: 'semibold', ink: 'ink' },
  struck: { size: 8.5, lineHeight: 11.5, weight: 'regular', ink: 'quiet' },
  step: { size: 8, lineHeight: 10.8, weight: 'regular', ink: 'ink' },
  stepStrong: { size: 8, lineHeight: 10.8, weight: 'semibold', ink: 'ink' },
  small: { size: 8, lineHeight: 11, weight: 'regular', ink: 'quiet' },
} as const satisfies Record<string, TextStyle>

/**
 * A text in lines. The space between two words stays at the end of its line, where it shows nothing: whoever reads the
 * text out of the file needs it (ISO 32000-1, 14.8.2.5).
 */
export function linesOf(text: string, width: number, style: TextStyle, faces: Faces): string[] {
  let at = 0
  return breakLines(text, width, (part) => faces.widthOf(part, style.size, style.weight)).map((line) => {
    at += line.length
    if (text[at] !== ' ') return line
    at += 1
    return `${line} `
  })
}

/** Base line of a line of text, from the top of its line box. */
export function baseLine(style: TextStyle): number {
  return (style.lineHeight - style.size) / 2 + style.size * 0.79
}

/**
 * A text as one piece a line. The first two lines stay together, and so do the last two, so that no page begins or ends
 * with a single line of a paragraph. `tag` is what its lines belong to, `signTag` the same of the sign before them.
 */
export function textPieces(
  text: string,
  style: TextStyle,
  faces: Faces,
  place: {
    readonly width: number
    readonly before: number
    readonly indent?: number
    readonly tag: Tag
    readonly sign?: string
    readonly signTag?: Tag
    readonly keepWithNext?: boolean
  },
): Piece[] {
  const indent = place.indent ?? 0
  const lines = linesOf(text, place.width - indent, style, faces)
  const last = lines.length - 1
  return lines.map(
    (line, index): Piece => ({
      height: style.lineHeight,
      before: index === 0 ? place.before : 0,
      keepWithNext: index === last ? (place.keepWithNext ?? false) : index === 0 || index === last - 1,
      marks: [
        ...(index === 0 && place.sign !== undefined
          ? [{ ...textMark(place.sign, { x: indent - 10, y: 0 }, style), tag: place.signTag }]
          : []),
        { ...textMark(line, { x: indent, y: 0 }, style), tag: place.tag },
      ],
    }),
  )
}

export function textMark(text: string, corner: { x: number; y: number }, style: TextStyle) {
  return {
    kind: 'text' as const,
    text,
    at: { x: corner.x, y: corner.y + baseLine(style) },
    size: style.size,
    weight: style.weight,
    ink: style.ink,
  }
}
