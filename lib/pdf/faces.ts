import fontkit from '@pdf-lib/fontkit'
import type { PrintFonts } from './pdfInput.ts'

export type Weight = 'regular' | 'semibold'

/** What layout has to know about the faces: widths, and which characters they have. */
export type Faces = {
  /** Width in points. The sum of the characters' own widths: the page is set without kerning and ligatures. */
  readonly widthOf: (text: string, size: number, weight: Weight) => number
  readonly canPrint: (codePoint: number) => boolean
}

export function facesOf(fonts: PrintFonts): Faces {
  const faces = { regular: faceOf(fonts.regular), semibold: faceOf(fonts.semibold) }
  return {
    widthOf: (text, size, weight) => {
      const face = faces[weight]
      let width = 0
      for (const character of text) width += face.advance(character.codePointAt(0) ?? 0)
      return (width * size) / face.unitsPerEm
    },
    canPrint: (codePoint) => faces.regular.has(codePoint) && faces.semibold.has(codePoint),
  }
}

function faceOf(bytes: Uint8Array) {
  const font = fontkit.create(bytes)
  const characters = new Set(font.characterSet)
  const advances = new Map<number, number>()
  return {
    unitsPerEm: font.unitsPerEm,
    has: (codePoint: number) => characters.has(codePoint),
    advance: (codePoint: number) => {
      const known = advances.get(codePoint)
      if (known !== undefined) return known
      const advance = font.glyphForCodePoint(codePoint).advanceWidth
      advances.set(codePoint, advance)
      return advance
    },
  }
}
