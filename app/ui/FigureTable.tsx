import { type ReactNode, useId } from 'react'

export type FigureColumn = {
  label: string
  /** Figures stand to the right with equal digits; the first column is always text and heads its row. */
  figures?: boolean | undefined
}

/**
 * A table of figures. Each row and foot row holds one cell per column, the first being the row's heading. Where the
 * table is wider than the screen it scrolls in a region of its own that the keyboard can reach.
 */
export function FigureTable({
  caption,
  columns,
  rows,
  foot = [],
}: {
  caption: ReactNode
  columns: readonly FigureColumn[]
  rows: readonly (readonly ReactNode[])[]
  foot?: readonly (readonly ReactNode[])[] | undefined
}) {
  const captionId = useId()
  const rowOf = (cells: readonly ReactNode[], key: string) => (
    <tr key={key}>
      {columns.map((column, at) =>
        at === 0 ? (
          <th key={column.label} scope="row">
            {cells[at]}
          </th>
        ) : (
          <td key={column.label} className={column.figures ? 'figure' : undefined}>
            {cells[at]}
          </td>
        ),
      )}
    </tr>
  )
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by keyboard
    <section className="figure-table" aria-labelledby={captionId} tabIndex={0}>
      <table>
        <caption id={captionId}>{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column.label} scope="col" className={column.figures ? 'figure' : undefined}>
                {column.label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>{rows.map((cells, at) => rowOf(cells, `row ${at}`))}</tbody>
        {foot.length === 0 ? null : <tfoot>{foot.map((cells, at) => rowOf(cells, `foot ${at}`))}</tfoot>}
      </table>
    </section>
  )
}
