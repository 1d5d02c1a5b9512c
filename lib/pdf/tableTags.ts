import type { TableBlock } from '../words/summary/block.ts'
import type { StructureElement } from './structureElement.ts'

/** The cells of a table's rows, for the marks that stand in them. */
export type TableTags = {
  readonly caption: StructureElement
  readonly head: readonly StructureElement[]
  readonly rows: readonly (readonly StructureElement[])[]
  readonly foot: readonly StructureElement[]
}

/** A table's elements: every row and the foot hold one cell per column, and the first one heads its row. */
export function tableTags({ columns, rows }: TableBlock): TableTags {
  const table: StructureElement = { role: 'Table' }
  const body: StructureElement = { role: 'TBody', parent: table }
  const cellsIn = (group: StructureElement) => {
    const parent: StructureElement = { role: 'TR', parent: group }
    return columns.map(
      (_, index): StructureElement =>
        group.role === 'THead'
          ? { role: 'TH', parent, scope: 'Column' }
          : index === 0
            ? { role: 'TH', parent, scope: 'Row' }
            : { role: 'TD', parent },
    )
  }
  return {
    caption: { role: 'Caption', parent: table },
    head: cellsIn({ role: 'THead', parent: table }),
    rows: rows.map(() => cellsIn(body)),
    foot: cellsIn({ role: 'TFoot', parent: table }),
  }
}
