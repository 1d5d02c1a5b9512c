import { Fragment } from 'react'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { TakeOff } from '../../../lib/core/takeoff/takeOff.ts'
import type { cutPlansFile } from '../../../lib/cutting/cutPlansFile.ts'
import { percentWords, weightWords } from '../../../lib/words/takeoff/figures.ts'
import { FigureTable } from '../../ui/FigureTable.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { CutBar } from './CutBar.tsx'
import { FindingList } from './FindingList.tsx'
import { QuantityTable } from './QuantityTable.tsx'

type CutPlan = Awaited<ReturnType<typeof cutPlansFile>>[number]

/** The take-off of the whole fence: quantities, weights, and what clashes or lacks. */
export function TakeOffPanels({
  notebookId,
  notebook,
  found,
}: {
  notebookId: string
  notebook: Notebook
  found: TakeOff
}) {
  const { quantities, weights, findings } = found
  if (quantities.length === 0 && findings.length === 0) return null
  return (
    <Panel heading="Take-off">
      <p>
        Worked out from the build-ups of sections and gates, for estimating. Open an item to put its
        quantities among the cost lines.
      </p>
      <FindingList notebookId={notebookId} notebook={notebook} findings={findings} />
      {quantities.length === 0 ? null : (
        <>
          <QuantityTable
            notebook={notebook}
            quantities={quantities}
            caption="Quantities of the whole fence"
          />
          <p>
            The fence weighs about {weightWords(weights.kilograms, notebook.units)};{' '}
            {percentWords(weights.reclaimedShare)} of that is reclaimed
            {weights.unknown > 0 ? `. The weight of ${weights.unknown} of the lines is not known` : ''}.
          </p>
        </>
      )}
    </Panel>
  )
}

/** One kind of stock: which piece from which length, what is over, and whether the plan is proven least. */
export function CutPlanPanel({ plan }: { plan: CutPlan }) {
  return (
    <Panel heading={plan.what}>
      <p>
        {plan.bought.text} to buy, {plan.waste.text} over ({plan.wastePercent} %), {plan.cuts} cuts.
      </p>
      <FigureTable
        caption="Length by length"
        columns={[
          { label: 'Cut from' },
          { label: 'Times', figures: true },
          { label: 'Pieces' },
          { label: 'Over', figures: true },
        ]}
        rows={plan.lengths.map((length) => [
          length.bought ? `${length.from}, to buy` : `${length.length.text}, at hand: ${length.from}`,
          String(length.times),
          <Fragment key="pieces">
            {length.pieces.map((piece) => `${piece.count} × ${piece.length.text}`).join(', ')}
            <CutBar
              whole={length.length.millimetres}
              pieces={length.pieces.flatMap((piece) =>
                Array.from({ length: piece.count }, () => piece.length.millimetres),
              )}
            />
          </Fragment>,
          length.rest.text,
        ])}
      />
      <p>
        {plan.leastBought === 'proven'
          ? 'No plan buys less: this is proven.'
          : `A plan that buys less may exist; at most ${plan.leastBought.gapPercent} percent less.`}
      </p>
      {[...plan.tooLong, ...plan.unplaced].map((piece) => (
        <p key={piece.label}>
          {piece.count} × {piece.length.text} ({piece.label}) comes out of no length that is there.
        </p>
      ))}
    </Panel>
  )
}
