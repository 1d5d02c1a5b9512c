import type { TableBlock, TableRow } from '../words/summary/block.ts'
import { type ColumnWish, columnWidths } from './columnWidths.ts'
import type { Faces } from './faces.ts'
import { type Mark, rule } from './mark.ts'
import type { Piece } from './paginate.ts'
import { linesOf, styles, type TextStyle, textMark, textPieces } from './textPieces.ts'

/** Blank between two columns, and above and below the lines of a row. */
const gutter = 9
const padding = 2.5
/** Titles of figures claim no more than this, in points. */
const widestFigureTitle = 90
/** A head of more lines than this is cut: names are given in full at the beginning of the paper. */
const mostHeadLines = 5

/** A table of so few rows stays on one page. */
const shortTable = 8

type Column = { readonly left: number; readonly width: number; readonly figure: boolean }

/** A table: its caption, its head (again on every page), its rows, its foot. No row is split that fits on a page. */
export function tablePieces(table: TableBlock, faces: Faces, width: number, columnHeight: number): Piece[] {
  const columns = columnsOf(table, faces, width)
  const head = headPiece(table, columns, faces, width)
  const tallest = columnHeight - head.height
  const rows = table.rows.flatMap((row) => rowPieces(row, columns, faces, width, tallest, head))
  const foot = table.foot ? footPieces(table.foot, columns, faces, width, tallest, head) : []
  const last = rows.at(-1)
  return [
    ...(table.caption === ''
      ? []
      : textPieces(table.caption, styles.caption, faces, { width, before: 9, keepWithNext: true })),
    // The first two rows stay with the head, the last one with the foot; a short table stays whole.
    { ...head, keepWithNext: rows.length + foot.length > 0 },
    ...rows.slice(0, -1).map((row, index) => ({
      ...(index === 0 ? withoutHead(row) : row),
      keepWithNext: index === 0 || rows.length <= shortTable,
    })),
    ...(last === undefined
      ? []
      : [{ ...(rows.length === 1 ? withoutHead(last) : last), keepWithNext: foot.length > 0 }]),
    ...foot,
    { height: 5, before: 0, keepWithNext: false, marks: [] },
  ]
}

/** The row under the printed head: were it alone at the head of a page, the head would be there already. */
function withoutHead(row: Piece): Piece {
  return { ...row, head: undefined }
}

function columnsOf(table: TableBlock, faces: Faces, width: number): Column[] {
  const room = width - gutter * (table.columns.length - 1)
  const measure = (text: string) => faces.widthOf(text, styles.cellStrong.size, 'semibold') + 0.5
  const wide = wishesOf(table, measure, (title) => Math.min(measure(title), widestFigureTitle))
  const fits = wide.reduce((sum, { natural }) => sum + natural, 0) <= room
  const widths = columnWidths(
    fits ? wide : wishesOf(table, measure, (title) => twoLines(title, measure)),
    room,
  )
  let left = 0
  return table.columns.map((column, index) => {
    const placed = { left, width: widths[index] ?? 0, figure: column.figure ?? false }
    left += placed.width + gutter
    return placed
  })
}

/** What each column asks for; `figureTitle` says how much the title of a column of figures may add. */
function wishesOf(
  table: TableBlock,
  measure: (text: string) => number,
  figureTitle: (title: string) => number,
): ColumnWish[] {
  const widestWord = (texts: readonly string[]) =>
    texts.reduce((widest, text) => Math.max(widest, ...text.split(' ').map(measure)), 0)
  return table.columns.map(({ title, figure = false }, index) => {
    const cells = [...table.rows.map((row) => row.cells[index] ?? ''), table.foot?.[index] ?? '']
    const widest = Math.max(...cells.map(measure))
    if (!figure)
      return { natural: Math.max(widest, measure(title)), least: widestWord([...cells, title]), figure }
    const least = Math.max(widest, Math.min(widestWord([title]), widestFigureTitle))
    return { natural: Math.max(least, figureTitle(title)), least, figure }
  })
}

/** The narrowest width at which a title takes no more than two lines, if it is not too wide for a column of figures. */
function twoLines(title: string, measure: (text: string) => number): number {
  const words = title.split(' ').slice(0, 12)
  const splits = words.map((_, index) =>
    Math.max(measure(words.slice(0, index).join(' ')), measure(words.slice(index).join(' '))),
  )
  return Math.min(widestFigureTitle, ...splits)
}

function headPiece(table: TableBlock, columns: readonly Column[], faces: Faces, width: number): Piece {
  const cells = table.columns.map(({ title }, index) => {
    const lines = linesOf(title, columns[index]?.width ?? 0, styles.cellStrong, faces)
    return lines.length <= mostHeadLines ? lines : [...lines.slice(0, mostHeadLines - 1), '…']
  })
  const lineCount = Math.max(1, ...cells.map((lines) => lines.length))
  // Heads stand on the rule below them, whatever their number of lines.
  const resting = cells.map((lines) => [
    ...Array.from({ length: lineCount - lines.length }, () => ''),
    ...lines,
  ])
  const height = lineCount * styles.cellStrong.lineHeight + padding
  return {
    height: height + 1,
    before: 2,
    keepWithNext: true,
    marks: [
      ...cellMarks(resting, columns, faces, styles.cellStrong, 0),
      rule({ x: 0, y: height }, { x: width, y: height }, 'ink', 0.8),
    ],
  }
}

function rowPieces(
  row: TableRow,
  columns: readonly Column[],
  faces: Faces,
  width: number,
  tallest: number,
  head: Piece,
): Piece[] {
  const style = row.struck ? styles.struck : styles.cell
  const cells = columns.map((column, index) => linesOf(row.cells[index] ?? '', column.width, style, faces))
  return slices(cells, style, tallest).map((lines, index, all): Piece => {
    const height = Math.max(1, ...lines.map((cell) => cell.length)) * style.lineHeight + 2 * padding
    return {
      height,
      before: 0,
      keepWithNext: false,
      head,
      marks: [
        ...cellMarks(lines, columns, faces, style, padding, row.struck),
        ...(index === all.length - 1 ? [rule({ x: 0, y: height }, { x: width, y: height })] : []),
      ],
    }
  })
}

function footPieces(
  foot: readonly string[],
  columns: readonly Column[],
  faces: Faces,
  width: number,
  tallest: number,
  head: Piece,
): Piece[] {
  const style = styles.cellStrong
  const cells = columns.map((column, index) => linesOf(foot[index] ?? '', column.width, style, faces))
  return slices(cells, style, tallest).map((lines): Piece => {
    const height = Math.max(1, ...lines.map((cell) => cell.length)) * style.lineHeight + 2 * padding
    return {
      height,
      before: 0,
      keepWithNext: false,
      head,
      marks: [
        rule({ x: 0, y: 0 }, { x: width, y: 0 }, 'ink', 0.8),
        ...cellMarks(lines, columns, faces, style, padding),
      ],
    }
  })
}

/** A row as it is, or, where it is taller than a page, cut into pieces of as many lines as a page takes. */
function slices(cells: readonly string[][], style: TextStyle, tallest: number): string[][][] {
  const most = Math.max(1, Math.floor((tallest - 2 * padding) / style.lineHeight))
  const lineCount = Math.max(1, ...cells.map((lines) => lines.length))
  return Array.from({ length: Math.ceil(lineCount / most) }, (_, index) =>
    cells.map((lines) => lines.slice(index * most, (index + 1) * most)),
  )
}

function cellMarks(
  cells: readonly string[][],
  columns: readonly Column[],
  faces: Faces,
  style: TextStyle,
  top: number,
  struck = false,
): Mark[] {
  return cells.flatMap((lines, index) => {
    const column = columns[index]
    if (column === undefined) return []
    return lines.flatMap((text, row): Mark[] => {
      if (text === '') return []
      const width = faces.widthOf(text, style.size, style.weight)
      const corner = {
        x: column.left + (column.figure ? column.width - width : 0),
        y: top + row * style.lineHeight,
      }
      const mark = textMark(text, corner, style)
      const middle = mark.at.y - style.size * 0.27
      // Only the figures are lined through: the words beside them say why.
      return struck && column.figure
        ? [mark, rule({ x: corner.x, y: middle }, { x: corner.x + width, y: middle }, 'quiet', 0.6)]
        : [mark]
    })
  })
}
