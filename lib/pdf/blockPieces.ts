import type { Drawing } from '../drawing/drawing.ts'
import type { Block } from '../words/summary/block.ts'
import { paperScaleWords } from '../words/summary/drawingWords.ts'
import { paperWords } from '../words/summary/paperWords.ts'
import { detailPieces, drawingPiece } from './drawingPieces.ts'
import type { Faces } from './faces.ts'
import { figurePieces, taggedFigure } from './figurePieces.ts'
import { box, type Mark, rule, tagged } from './mark.ts'
import { columnHeight, columnWidth, type PageSize } from './pageSize.ts'
import type { Piece } from './paginate.ts'
import { signaturePieces } from './signaturePieces.ts'
import { stepsPieces } from './stepsPieces.ts'
import type { StructureElement } from './structureElement.ts'
import { tablePieces } from './tablePieces.ts'
import { linesOf, styles, type TextStyle, textMark, textPieces } from './textPieces.ts'

/** Content as strips of a column, tagged with its structure. Pure: the same blocks and faces give the same pieces. */
export function blockPieces(block: Block, drawing: Drawing, faces: Faces, page: PageSize): Piece[] {
  const width = columnWidth(page)
  switch (block.kind) {
    case 'title':
      return [
        ...textPieces(block.text, styles.title, faces, {
          width,
          before: 0,
          keepWithNext: true,
          tag: { role: 'H1' },
        }),
        ...textPieces(block.standing, styles.standing, faces, {
          width,
          before: 2,
          keepWithNext: true,
          tag: { role: 'P' },
        }),
      ]
    case 'heading':
      return block.level === 1
        ? chapterPieces(block.text, faces, width)
        : textPieces(block.text, styles.part, faces, {
            width,
            before: 12,
            keepWithNext: true,
            tag: { role: 'H3' },
          })
    case 'paragraph':
      return textPieces(block.text, styles.body, faces, { width, before: 5, tag: { role: 'P' } })
    case 'list':
      return listPieces(block.items, faces, width)
    case 'table':
      return tablePieces(block, faces, width, columnHeight(page))
    case 'steps':
      return stepsPieces(block, faces, width)
    case 'caution':
      return [cautionPiece(block, faces, width)]
    case 'drawing':
      return [
        {
          ...taggedFigure(drawingPiece(drawing, faces, width, columnHeight(page) - 120), block.description),
          keepWithNext: true,
        },
        ...textPieces(`${block.caption} ${scaleSentence(drawing)}`.trim(), styles.small, faces, {
          width,
          before: 4,
          tag: { role: 'P' },
        }),
        ...listPieces(block.notes, faces, width),
        ...detailPieces(drawing, faces, width, columnHeight(page)).map((piece) =>
          taggedFigure(piece, paperWords.largerDrawing(labelsOf(piece))),
        ),
      ]
    case 'figure':
      return figurePieces(block, faces, width, columnHeight(page))
    case 'signature':
      return signaturePieces(block, faces, width, columnHeight(page))
  }
}

function scaleSentence(drawing: Drawing): string {
  return drawing.scale.millimetresPerUnit > 0 ? paperScaleWords(drawing.scale.millimetresPerUnit) : ''
}

function labelsOf(piece: Piece): string[] {
  return piece.marks.flatMap((mark) => (mark.kind === 'text' && mark.text !== '' ? [mark.text] : []))
}

function listPieces(items: readonly string[], faces: Faces, width: number): Piece[] {
  const list: StructureElement = { role: 'L' }
  return items.flatMap((item) => {
    const parent: StructureElement = { role: 'LI', parent: list }
    const tag: StructureElement = { role: 'LBody', parent }
    const signTag: StructureElement = { role: 'Lbl', parent }
    return textPieces(item, styles.body, faces, { width, before: 3, indent: 14, sign: '•', signTag, tag })
  })
}

function chapterPieces(text: string, faces: Faces, width: number): Piece[] {
  const line: Piece = {
    height: 4,
    before: 18,
    keepWithNext: true,
    marks: [rule({ x: 0, y: 0 }, { x: width, y: 0 }, 'ink', 1.2)],
  }
  return [
    line,
    ...textPieces(text, styles.chapter, faces, { width, before: 0, keepWithNext: true, tag: { role: 'H2' } }),
  ]
}

/** A bar at the left and a pale ground: it has to be seen. Our own words only, so it never fills a page. */
function cautionPiece(
  block: { readonly title: string; readonly text: string },
  faces: Faces,
  width: number,
): Piece {
  const [indent, padding] = [12, 6]
  const room = width - indent - padding
  const parent: StructureElement = { role: 'Sect' }
  const rowsOf = (text: string, style: TextStyle) => {
    const tag: StructureElement = { role: 'P', parent }
    return linesOf(text, room, style, faces).map((line) => ({ text: line, style, tag }))
  }
  const rows = [...rowsOf(block.title, styles.strong), ...rowsOf(block.text, styles.body)]
  const height = rows.length * styles.body.lineHeight + 2 * padding - 2
  const texts = rows.map(
    ({ text, style, tag }, index): Mark =>
      tagged(textMark(text, { x: indent, y: padding - 1 + index * style.lineHeight }, style), tag),
  )
  return {
    height,
    before: 6,
    keepWithNext: false,
    marks: [
      { kind: 'polygon', points: box(0, 0, width, height), fill: 'band' },
      { kind: 'polygon', points: box(0, 0, 3.5, height), fill: 'ink' },
      ...texts,
    ],
  }
}
