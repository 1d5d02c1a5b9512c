import type { TableBlock } from '../words/summary/block.ts'
import { type ColumnWish, columnWidths } from './columnWidths.ts'
import type { Faces } from './faces.ts'
import { styles } from './textPieces.ts'

/** Blank between two columns. */
const gutter = 9
/** Titles of figures claim no more than this, in points. */
const widestFigureTitle = 90

/** Columns of figures stand at their right edge. */
export type TableColumns = readonly Column[]
type Column = { readonly left: number; readonly width: number; readonly figure: boolean }

/** Where the columns of a table stand in a column of text `width` wide, in points. */
export function tableColumns(table: TableBlock, faces: Faces, width: number): TableColumns {
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
