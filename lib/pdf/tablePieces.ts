import type { TableBlock, TableRow } from '../words/summary/block.ts'
import type { Faces } from './faces.ts'
import { emptyMark, type Mark, rule, tagged } from './mark.ts'
import type { Piece } from './paginate.ts'
import type { StructureElement } from './structureElement.ts'
import { type TableColumns, tableColumns } from './tableColumns.ts'
import { tableTags } from './tableTags.ts'
import { linesOf, styles, type TextStyle, textMark, textPieces } from './textPieces.ts'

/** Blank above and below the lines of a row. */
const padding = 2.5
/** A head of more lines than this is cut: names are given in full at the beginning of the paper. */
const mostHeadLines = 5

/** A table of so few rows stays on one page, unless that would leave a hole before it. */
const shortTable = 8

/** A table: its caption, its head (again on every page), its rows, its foot. No row is split that fits on a page. */
export function tablePieces(table: TableBlock, faces: Faces, width: number, columnHeight: number): Piece[] {
  const columns = tableColumns(table, faces, width)
  const tags = tableTags(table)
  // The head of a further page says nothing new: it is ornament there.
  const head = headPiece(table, columns, faces, width)
  const tallest = columnHeight - head.height
  const rows = table.rows.flatMap((row, index) =>
    rowPieces(row, columns, faces, width, tallest, head, tags.rows[index] ?? []),
  )
  const foot = table.foot ? footPieces(table.foot, columns, faces, width, tallest, head, tags.foot) : []
  return [
    ...(table.caption === ''
      ? []
      : textPieces(table.caption, styles.caption, faces, {
          width,
          before: 9,
          keepWithNext: true,
          tag: tags.caption,
        })),
    // The first two rows stay with the head, the last two with the foot; a short table stays whole, where that leaves no hole.
    { ...headPiece(table, columns, faces, width, tags.head), keepWithNext: rows.length + foot.length > 0 },
    ...rows.map((row, index): Piece => {
      const [last, nearEdge] = [index === rows.length - 1, index === 0 || index === rows.length - 2]
      return {
        ...(index === 0 ? withoutHead(row) : row),
        keepWithNext: last ? foot.length > 0 : nearEdge || rows.length <= shortTable,
        mayPart: !last && !nearEdge,
      }
    }),
    ...foot,
    { height: 5, before: 0, keepWithNext: false, marks: [] },
  ]
}

/** The row under the printed head: were it alone at the head of a page, the head would be there already. */
function withoutHead(row: Piece): Piece {
  return { ...row, head: undefined }
}

function headPiece(
  table: TableBlock,
  columns: TableColumns,
  faces: Faces,
  width: number,
  tags: readonly StructureElement[] = [],
): Piece {
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
      ...cellMarks(resting, columns, faces, styles.cellStrong, 0, tags),
      rule({ x: 0, y: height }, { x: width, y: height }, 'ink', 0.8),
    ],
  }
}

function rowPieces(
  row: TableRow,
  columns: TableColumns,
  faces: Faces,
  width: number,
  tallest: number,
  head: Piece,
  tags: readonly StructureElement[],
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
        ...cellMarks(lines, columns, faces, style, padding, tags, row.struck),
        ...(index === all.length - 1 ? [rule({ x: 0, y: height }, { x: width, y: height })] : []),
      ],
    }
  })
}

function footPieces(
  foot: readonly string[],
  columns: TableColumns,
  faces: Faces,
  width: number,
  tallest: number,
  head: Piece,
  tags: readonly StructureElement[],
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
        ...cellMarks(lines, columns, faces, style, padding, tags),
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
  columns: TableColumns,
  faces: Faces,
  style: TextStyle,
  top: number,
  tags: readonly StructureElement[],
  struck = false,
): Mark[] {
  return cells.flatMap((lines, index) => {
    const column = columns[index]
    if (column === undefined) return []
    const tag = tags[index]
    if (tag !== undefined && lines.every((text) => text === '')) return [emptyMark(tag)]
    return lines.flatMap((text, row): Mark[] => {
      if (text === '') return []
      const width = faces.widthOf(text.trimEnd(), style.size, style.weight)
      const corner = {
        x: column.left + (column.figure ? column.width - width : 0),
        y: top + row * style.lineHeight,
      }
      const mark = { ...textMark(text, corner, style), tag }
      const middle = mark.at.y - style.size * 0.27
      // Only the figures are lined through: the words beside them say why.
      return struck && column.figure
        ? [
            mark,
            tagged(rule({ x: corner.x, y: middle }, { x: corner.x + width, y: middle }, 'quiet', 0.6), tag),
          ]
        : [mark]
    })
  })
}
