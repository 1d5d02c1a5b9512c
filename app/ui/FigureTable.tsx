// biome-ignore-all lint/a11y/noRedundantRoles: Safari drops the roles of a table that is laid out as blocks
import { type ReactNode, useId } from 'react'

export type FigureColumn = {
  label: string
  /** Figures stand to the right with equal digits; the first column is always text and heads its row. */
  figures?: boolean | undefined
  /** What the row comes to: on a phone it stands beside the row's name. */
  result?: boolean | undefined
}

/**
 * A table of figures. Each row and foot row holds one cell per column, the first being the row's heading. On a phone a
 * row of four columns and more, or of three of words alone, becomes a block, with each figure under the title of its
 * column (figureTable.css), and one of six or seven and more on a tablet too; the roles are written out, since some
 * browsers drop those of a table that is not laid out as one. Where a table is wider than its place all the same it
 * scrolls in a region of its own that the keyboard can reach.
 */
export function FigureTable({
  caption,
  captionUnseen = false,
  columns,
  rows,
  foot = [],
}: {
  caption: ReactNode
  /** Only read out: where the heading above says the same to whoever sees it. */
  captionUnseen?: boolean
  columns: readonly FigureColumn[]
  rows: readonly (readonly ReactNode[])[]
  foot?: readonly (readonly ReactNode[])[] | undefined
}) {
  const captionId = useId()
  const words = columns.every(({ figures }) => figures !== true)
  const inBlocks = columns.length > (words ? 2 : 3)
  const className = ['figure-table', inBlocks ? 'in-blocks' : '', manyColumns(columns.length)]
    .filter(Boolean)
    .join(' ')
  const rowOf = (cells: readonly ReactNode[], key: string) => (
    <tr key={key} role="row">
      {columns.map((column, at) =>
        at === 0 ? (
          <th key={column.label} scope="row" role="rowheader">
            {cells[at]}
          </th>
        ) : (
          <td
            key={column.label}
            role="cell"
            className={cellClass(column)}
            data-label={inBlocks ? column.label : undefined}
          >
            {cells[at]}
          </td>
        ),
      )}
    </tr>
  )
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by keyboard
    <section className={className} aria-labelledby={captionId} tabIndex={0}>
      <table role="table">
        <caption id={captionId} className={captionUnseen ? 'only-read-out' : undefined}>
          {caption}
        </caption>
        <thead role="rowgroup">
          <tr role="row">
            {columns.map((column) => (
              <th
                key={column.label}
                scope="col"
                role="columnheader"
                className={column.figures ? 'figure' : undefined}
              >
                {column.label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody role="rowgroup">{rows.map((cells, at) => rowOf(cells, `row ${at}`))}</tbody>
        {foot.length === 0 ? null : (
          <tfoot role="rowgroup">{foot.map((cells, at) => rowOf(cells, `foot ${at}`))}</tfoot>
        )}
      </table>
    </section>
  )
}

function cellClass({ figures, result }: FigureColumn): string | undefined {
  return [figures ? 'figure' : '', result ? 'result' : ''].filter(Boolean).join(' ') || undefined
}

/** From how many columns on a row needs more room than a tablet has. */
function manyColumns(count: number): string {
  if (count > 6) return 'most-columns'
  return count > 5 ? 'many-columns' : ''
}
