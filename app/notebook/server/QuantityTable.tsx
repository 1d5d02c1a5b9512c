import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { Finding } from '../../../lib/core/takeoff/finding.ts'
import type { Quantity } from '../../../lib/core/takeoff/quantity.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import { weightWords } from '../../../lib/words/takeoff/figures.ts'
import { findingText } from '../../../lib/words/takeoff/findingText.ts'
import { quantityText } from '../../../lib/words/takeoff/quantityText.ts'
import { stepText } from '../../../lib/words/takeoff/stepText.ts'
import { FigureTable } from '../../ui/FigureTable.tsx'
import { Workings } from '../../ui/Workings.tsx'

/** Worked-out quantities with their weights, each with how it came about. */
export function QuantityTable({
  notebook,
  quantities,
  caption,
}: {
  notebook: Notebook
  quantities: readonly Quantity[]
  caption: string
}) {
  const { units } = notebook
  return (
    <>
      <FigureTable
        caption={caption}
        columns={[
          { label: 'What' },
          { label: 'Quantity', figures: true },
          { label: 'Weight', figures: true },
        ]}
        rows={quantities.map((one) => [
          one.reclaimed ? `${quantityText(one.name)} (reclaimed)` : quantityText(one.name),
          `${one.quantity} ${one.unit}`,
          one.kilograms === undefined ? 'not known' : weightWords(one.kilograms, units),
        ])}
      />
      <Workings
        steps={quantities.flatMap((one) => {
          const steps = one.workings.map((step) => stepText(step, units)).join(' ')
          return [`${quantityText(one.name)}: ${steps} ${one.quantity} ${one.unit}.`]
        })}
      />
    </>
  )
}

/** What clashes or lacks, as sentences. */
export function FindingList({ notebook, findings }: { notebook: Notebook; findings: readonly Finding[] }) {
  if (findings.length === 0) return null
  return (
    <ul>
      {findings.map((finding) => (
        <li key={`${finding.path} ${finding.kind}`}>
          <strong>{placeOf(notebook, finding.path)}.</strong> {findingText(notebook, finding)}
        </li>
      ))}
    </ul>
  )
}

/** Which item a finding is of, by its name; the line for all else. */
function placeOf(notebook: Notebook, path: string): string {
  const match = /^(sections|gates)\[([0-9]+)\]/.exec(path)
  const list = match?.[1] === 'gates' ? 'gates' : 'sections'
  const item = match ? notebook[list][Number(match[2])] : undefined
  if (item === undefined) return 'The line'
  return itemTitle({ kind: list === 'gates' ? 'gate' : 'section', name: item.name, key: `item:${item.id}` })
}
