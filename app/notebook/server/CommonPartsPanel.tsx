import { itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import { commonParts } from '../../../lib/core/shares/commonParts.ts'
import { commonPartsNote, commonPartsTable, commonPartsTitle } from '../../../lib/words/commonPartsText.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { FigureTable } from '../../ui/FigureTable.tsx'
import { Panel } from '../../ui/Panel.tsx'
import type { Opened } from './opened.ts'
import { standingOf } from './standingOf.ts'

/** What each section and gate comes to with its part of the common costs; nothing where none is laid on them. */
export function CommonPartsPanel({ opened }: { opened: Opened }) {
  const { statement, notebook } = opened
  const parts = statement.ok ? commonParts(statement.value.items) : undefined
  if (parts === undefined) return null
  const { columns, rows, foot } = commonPartsTable(
    parts,
    (item) => itemTitle(standingOf(opened, itemKey(item.id)).item),
    shareNames(notebook),
  )
  return (
    <Panel heading={commonPartsTitle}>
      <FigureTable
        caption="Own cost, part of the common costs, and both"
        columns={columns.map((label, at) => ({ label, figures: at > 0 }))}
        rows={rows}
        foot={[foot]}
      />
      <p>{commonPartsNote}</p>
    </Panel>
  )
}
