import type { Notebook } from '../core/agreement/notebook.ts'
import type { SheetBlock } from '../words/sheets/sheetBlock.ts'
import type { Standing } from '../words/summary/summaryInput.ts'
import { blockPieces } from './blockPieces.ts'
import { enlarged, reductions } from './enlarged.ts'
import { type Faces, facesOf } from './faces.ts'
import { type FurnitureWords, furnitureMarks, underMarks } from './furniture.ts'
import { bytesOf, makeDocument } from './makeDocument.ts'
import { type Mark, moved, rule, tagged } from './mark.ts'
import { columnHeight, columnWidth, type PageSize, pageSize } from './pageSize.ts'
import { type Piece, paginate } from './paginate.ts'
import type { PrintFonts } from './pdfInput.ts'
import { printableBlocks, printer } from './printable.ts'
import { plainTitle } from './summaryPdf.ts'
import { styles, textMark } from './textPieces.ts'

export type SheetInput = {
  readonly title: string
  readonly units: Notebook['units']
  readonly content: readonly SheetBlock[]
  readonly standing: Standing
  /** What stands at head and foot where the sheet is about something else than a revision. */
  readonly furniture?: FurnitureWords
  readonly madeAt?: Date
  readonly fonts: PrintFonts
}

/**
 * A sheet on one page: at its full size where it fits, else a little smaller. Only where even the smallest does not hold
 * it, it goes on over further pages, at full size. Same input, same bytes.
 */
export async function sheetPdf(input: SheetInput): Promise<Uint8Array> {
  const { title, units, content, standing, furniture: words, madeAt, fonts } = input
  const faces = facesOf(fonts)
  const laid = (reduction: number) => {
    const page = enlarged(pageSize(units), reduction)
    return { reduction, page, columns: paginate(piecesOf(content, faces, page), columnHeight(page)) }
  }
  const whole = laid(1)
  const tried = reductions.map((reduction) => (reduction === 1 ? whole : laid(reduction)))
  const { reduction, page, columns } = tried.find((one) => one.columns.length === 1) ?? whole
  const shownTitle = printer(faces.canPrint).text(title)
  const pages = columns.map((marks, index) => [
    ...underMarks(standing, faces, page),
    ...marks.map((mark) => moved(mark, { x: page.left, y: page.top })),
    ...furnitureMarks({ title: shownTitle, standing, words }, faces, page, index + 1, columns.length),
  ])
  const document = await makeDocument(
    pages,
    page,
    { title: plainTitle(title), language: 'en', madeAt, reduction },
    fonts,
  )
  return bytesOf(document)
}

function piecesOf(content: readonly SheetBlock[], faces: Faces, page: PageSize): Piece[] {
  const print = printer(faces.canPrint)
  return content.flatMap((block) =>
    block.kind === 'room'
      ? [roomPiece(print.text(block.title), block.lines, page)]
      : printableBlocks([block], print).flatMap((one) => blockPieces(one, noDrawing, faces, page)),
  )
}

const noDrawing = {
  width: 1,
  height: 1,
  shapes: [],
  notes: [],
  parts: [],
  scale: { millimetresPerUnit: 0, setbacksDrawnWider: 1, heightsDrawnHigher: 1 },
}

/** Lines to write on by hand, a finger apart, with the word for them above. */
function roomPiece(title: string, lines: number, page: PageSize): Piece {
  const lineHeight = 22
  const top = styles.small.lineHeight + 2
  const marks: Mark[] = [tagged(textMark(title, { x: 0, y: 0 }, styles.small), { role: 'P' })]
  for (let line = 1; line <= lines; line += 1) {
    const y = top + line * lineHeight
    marks.push(rule({ x: 0, y }, { x: columnWidth(page), y }, 'ink', 0.6))
  }
  return { height: top + lines * lineHeight + 2, before: 10, keepWithNext: false, marks }
}
