import type { Drawing } from '../drawing/drawing.ts'
import type { Block } from '../words/summary/block.ts'
import { characterNumber, paperWords } from '../words/summary/paperWords.ts'
import { blockPieces } from './blockPieces.ts'
import type { Faces } from './faces.ts'
import { type Furniture, furnitureMarks, underMarks } from './furniture.ts'
import { type Mark, moved } from './mark.ts'
import { columnHeight, type PageSize } from './pageSize.ts'
import { type Piece, paginate } from './paginate.ts'
import { printableBlocks, printableDrawing, printer } from './printable.ts'

/** Everything on every page, in order of painting. Pure: no PDF is made here. */
export function layOut(
  content: readonly Block[],
  drawing: Drawing,
  furniture: Furniture,
  faces: Faces,
  page: PageSize,
): readonly (readonly Mark[])[] {
  const print = printer(faces.canPrint)
  const blocks = printableBlocks(content, print)
  const printedDrawing = printableDrawing(drawing, print)
  const title = print.text(furniture.title)
  const marked = print.marked()
  const listed: Block[] =
    marked.length === 0
      ? []
      : [
          { kind: 'heading', level: 1, id: 'unprintable', text: paperWords.unprintableTitle },
          { kind: 'paragraph', text: paperWords.unprintable(marked.map(characterNumber)) },
        ]
  const all = [...blocks, ...listed]
  const pieces = all.flatMap((block, index) => {
    const own = blockPieces(block, printedDrawing, faces, page)
    return block.kind === 'paragraph' && all[index + 1]?.kind === 'signature' ? withNext(own) : own
  })
  const pages = paginate(pieces, columnHeight(page))
  return pages.map((marks, index) => [
    ...underMarks(furniture.standing, faces, page),
    ...marks.map((mark) => moved(mark, { x: page.left, y: page.top })),
    ...furnitureMarks({ ...furniture, title }, faces, page, index + 1, pages.length),
  ])
}

/** What leads to the places to sign stays on the page of the first one. */
function withNext(pieces: readonly Piece[]): readonly Piece[] {
  return pieces.map((piece, index) =>
    index === pieces.length - 1 ? { ...piece, keepWithNext: true } : piece,
  )
}
