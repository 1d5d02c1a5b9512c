import type { Drawing } from '../drawing/drawing.ts'
import type { Block } from '../words/summary/block.ts'
import { paperScaleWords } from '../words/summary/drawingWords.ts'
import { detailPieces, drawingPiece } from './drawingPieces.ts'
import type { Faces } from './faces.ts'
import { box, type Mark, rule } from './mark.ts'
import { columnHeight, columnWidth, type PageSize } from './pageSize.ts'
import type { Piece } from './paginate.ts'
import { signaturePieces } from './signaturePieces.ts'
import { tablePieces } from './tablePieces.ts'
import { linesOf, styles, textMark, textPieces } from './textPieces.ts'

/** Content as strips of a column. Pure: the same blocks and faces give the same pieces. */
export function blockPieces(block: Block, drawing: Drawing, faces: Faces, page: PageSize): Piece[] {
  const width = columnWidth(page)
  switch (block.kind) {
    case 'title':
      return [
        ...textPieces(block.text, styles.title, faces, { width, before: 0, keepWithNext: true }),
        ...textPieces(block.standing, styles.standing, faces, { width, before: 2, keepWithNext: true }),
      ]
    case 'heading':
      return block.level === 1
        ? chapterPieces(block.text, faces, width)
        : textPieces(block.text, styles.part, faces, { width, before: 12, keepWithNext: true })
    case 'paragraph':
      return textPieces(block.text, styles.body, faces, { width, before: 5 })
    case 'list':
      return block.items.flatMap((item) =>
        textPieces(item, styles.body, faces, { width, before: 3, indent: 14, sign: '•' }),
      )
    case 'table':
      return tablePieces(block, faces, width, columnHeight(page))
    case 'caution':
      return [cautionPiece(block, faces, width)]
    case 'drawing':
      return [
        { ...drawingPiece(drawing, faces, width, columnHeight(page) - 120), keepWithNext: true },
        ...textPieces(`${block.caption} ${scaleSentence(drawing)}`.trim(), styles.small, faces, {
          width,
          before: 4,
        }),
        ...block.notes.flatMap((note) =>
          textPieces(note, styles.body, faces, { width, before: 3, indent: 14, sign: '•' }),
        ),
        ...detailPieces(drawing, faces, width, columnHeight(page)),
      ]
    case 'signature':
      return signaturePieces(block, faces, width, columnHeight(page))
  }
}

function scaleSentence(drawing: Drawing): string {
  return drawing.scale.millimetresPerUnit > 0 ? paperScaleWords(drawing.scale.millimetresPerUnit) : ''
}

function chapterPieces(text: string, faces: Faces, width: number): Piece[] {
  const line: Piece = {
    height: 4,
    before: 18,
    keepWithNext: true,
    marks: [rule({ x: 0, y: 0 }, { x: width, y: 0 }, 'ink', 1.2)],
  }
  return [line, ...textPieces(text, styles.chapter, faces, { width, before: 0, keepWithNext: true })]
}

/** A bar at the left and a pale ground: it has to be seen. Our own words only, so it never fills a page. */
function cautionPiece(
  block: { readonly title: string; readonly text: string },
  faces: Faces,
  width: number,
): Piece {
  const [indent, padding] = [12, 6]
  const room = width - indent - padding
  const rows = [
    ...linesOf(block.title, room, styles.strong, faces).map((text) => ({ text, style: styles.strong })),
    ...linesOf(block.text, room, styles.body, faces).map((text) => ({ text, style: styles.body })),
  ]
  const height = rows.length * styles.body.lineHeight + 2 * padding - 2
  const texts = rows.map(
    ({ text, style }, index): Mark =>
      textMark(text, { x: indent, y: padding - 1 + index * style.lineHeight }, style),
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
