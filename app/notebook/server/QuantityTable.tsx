import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { Quantity } from '../../../lib/core/takeoff/quantity.ts'
import { quantityWords } from '../../../lib/words/quantityWords.ts'
import { roughWeightWords } from '../../../lib/words/takeoff/figures.ts'
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
          quantityWords(one.quantity, one.unit),
          one.kilograms === undefined ? 'not known' : roughWeightWords(one.kilograms, units),
        ])}
      />
      <Workings
        steps={quantities.flatMap((one) => {
          const steps = one.workings.map((step) => stepText(step, units)).join(' ')
          return [`${quantityText(one.name)}: ${steps} ${quantityWords(one.quantity, one.unit)}.`]
        })}
      />
    </>
  )
}
