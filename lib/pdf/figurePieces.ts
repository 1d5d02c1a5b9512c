import { figureDrawing } from '../drawing/figures/figureDrawing.ts'
import { figureWords } from '../words/figures/figureWords.ts'
import type { FigureBlock } from '../words/summary/block.ts'
import { drawingPiece } from './drawingPieces.ts'
import type { Faces } from './faces.ts'
import { tagged } from './mark.ts'
import type { Piece } from './paginate.ts'
import { printableShapes, printer } from './printable.ts'
import type { StructureElement } from './structureElement.ts'
import { styles, textPieces } from './textPieces.ts'

/** Letters of a figure on paper, in points: as a rule, and where it has to be a little lower to fit on its page. */
const letters = { wanted: 8, least: 7 } as const

/** A figure under its caption, on one page with it: drawn for paper, one unit to a point. */
export function figurePieces(
  { figure, caption, description }: FigureBlock,
  faces: Faces,
  width: number,
  columnHeight: number,
): Piece[] {
  const drawn = (text: number) => {
    const drawing = figureDrawing(figure, { width, text, words: figureWords })
    const shapes = printableShapes(drawing.shapes, printer(faces.canPrint))
    return taggedFigure(drawingPiece({ ...drawing, shapes }, faces, width, columnHeight - 60), description)
  }
  return [
    ...textPieces(caption, styles.caption, faces, {
      width,
      before: 8,
      keepWithNext: true,
      tag: { role: 'P' },
    }),
    { ...drawn(letters.wanted), lower: drawn(letters.least) },
  ]
}

/** All that is drawn is one figure; its texts belong to it. */
export function taggedFigure(piece: Piece, alternative: string): Piece {
  const tag: StructureElement = { role: 'Figure', alternative }
  return { ...piece, marks: piece.marks.map((mark) => tagged(mark, tag)) }
}
