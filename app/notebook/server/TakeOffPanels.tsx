import { Fragment } from 'react'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { ItemAt } from '../../../lib/core/takeoff/postLayout.ts'
import type { TakeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { typedBesideTakeOff } from '../../../lib/core/takeoff/typedBesideTakeOff.ts'
import type { cutPlansFile } from '../../../lib/cutting/cutPlansFile.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import { capitalised, spokenList } from '../../../lib/words/summary/names.ts'
import { typedByHandWords } from '../../../lib/words/takeoff/apartText.ts'
import { percentWords, plainFigure, roughWeightWords } from '../../../lib/words/takeoff/figures.ts'
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
  const typed = typedBesideTakeOff(notebook, found)
  return (
    <Panel heading="Take-off">
      <p>
        Worked out from the build-ups of sections and gates, for estimating. Open an item to put its
        quantities among the cost lines.
      </p>
      <FindingList notebookId={notebookId} notebook={notebook} findings={findings} />
      {typed.length === 0 ? null : <p>{typedByHandWords(typed.map((item) => titleOf(notebook, item)))}</p>}
      {quantities.length === 0 ? null : (
        <>
          {[...found.sections.map(({ parts, ...rest }) => ({ ...rest, item: parts.item })), ...found.gates]
            .filter((one) => one.quantities.length > 0)
            .map((one) => (
              <QuantityTable
                key={`${one.item.list} ${one.item.index}`}
                notebook={notebook}
                quantities={one.quantities}
                caption={`Quantities of ${titleOf(notebook, one.item)}`}
              />
            ))}
          <p>
            {countedWords(notebook)} What is counted weighs about{' '}
            {roughWeightWords(weights.kilograms, notebook.units)}; {percentWords(weights.reclaimedShare)} of
            that is reclaimed
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
    <Panel heading={cutPlanTitle(plan)}>
      <p>{cutPlanWords(plan)}</p>
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
            {piecesWords(length.pieces)}
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
          : `A plan that buys less may exist; at most ${plainFigure(Math.ceil(plan.leastBought.gapPercent * 10) / 10, 1)} percent less.`}
      </p>
      {[...plan.tooLong, ...plan.unplaced].map((piece) => (
        <p key={piece.label}>
          {piece.count} × {piece.length.text} ({piece.label}) comes out of no length that is there.
        </p>
      ))}
    </Panel>
  )
}

function titleOf(notebook: Notebook, { list, index }: ItemAt): string {
  const item = notebook[list][index]
  const kind = list === 'gates' ? 'gate' : 'section'
  return item === undefined ? '' : itemTitle({ kind, name: item.name, key: `item:${item.id}` })
}

/** A part without a build-up is in no figure of the take-off, and the reader is told. */
function countedWords({ sections, gates }: Notebook): string {
  const built = (list: readonly { readonly buildUp?: unknown }[]) =>
    list.filter(({ buildUp }) => buildUp !== undefined).length
  const [ofSections, ofGates] = [built(sections), built(gates)]
  return ofSections === sections.length && ofGates === gates.length
    ? 'Every section and gate has a build-up and is counted.'
    : `Counted is what has a build-up: ${ofSections} of ${sections.length} sections, ${ofGates} of ${gates.length} gates.`
}

const partWords: Readonly<Record<string, readonly [one: string, all: string]>> = {
  posts: ['post', 'posts'],
  rails: ['rail', 'rails'],
  frame: ['gate frame', 'gate frames'],
  header: ['header', 'headers'],
}

/** What part of an item a piece is for; its label names the item and the part. */
function partOf(label: string): string {
  return label.slice(label.lastIndexOf(' ') + 1)
}

/** One profile can be cut for several parts: then its title names them, not the first one's own words. */
function cutPlanTitle(plan: CutPlan): string {
  const parts = [...new Set(plan.lengths.flatMap(({ pieces }) => pieces.map(({ label }) => partOf(label))))]
  if (parts.length < 2) return capitalised(plan.what)
  const [_ofTheFirst, ...sizes] = plan.what.split(', ')
  const named = spokenList(parts.map((part) => partWords[part]?.[1] ?? part))
  return [capitalised(named), ...sizes].join(', ')
}

function cutPlanWords(plan: CutPlan): string {
  const bought = plan.lengths.filter((length) => length.bought).reduce((sum, { times }) => sum + times, 0)
  const lengths = `${bought} ${bought === 1 ? 'length' : 'lengths'} to buy, ${plan.bought.text} in all.`
  return `${bought === 0 ? 'Nothing to buy.' : lengths} ${plan.waste.text} is over, saw cuts counted: ${plainFigure(plan.wastePercent, 1)} percent of all lengths that are cut. ${plan.cuts} cuts.`
}

/** Equal pieces for the same part as one, with what they are for. */
function piecesWords(pieces: CutPlan['lengths'][number]['pieces']): string {
  const counts = new Map<string, number>()
  for (const { label, length, count } of pieces) {
    const what = `${length.text} ${partWords[partOf(label)]?.[0] ?? partOf(label)}`
    counts.set(what, (counts.get(what) ?? 0) + count)
  }
  return [...counts].map(([what, count]) => `${count}\u00A0×\u00A0${what}`).join(', ')
}
