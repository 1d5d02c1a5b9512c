import type { ForBoth } from '../../../lib/core/people/household.ts'
import {
  apartWords,
  capsSentence,
  itemStepSentences,
  stepSentences,
  stepsNote,
} from '../../../lib/words/distanceText.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { capitalised } from '../../../lib/words/summary/names.ts'
import { FigureTable } from '../../ui/FigureTable.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { itemTitles } from './itemTitles.ts'
import type { Found } from './PositionsView.tsx'

/** Where a distance comes from, item by item: in words first, then in figures. `proposed`: ids that a proposal is about. */
export function WhereApart({
  opened,
  distance,
  said,
  names,
  proposed,
}: Found & { proposed: ReadonlySet<string> }) {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const between = (asked: ForBoth<bigint>) => `${money(asked.a)} to ${money(asked.b)}`
  const titleOf = itemTitles(opened.document)
  const caps = capsSentence(distance.caps, names)
  if (distance.items.length === 0) return null
  return (
    <Panel heading="Where the distance comes from">
      <p>
        From {said.first} to {said.second}:
      </p>
      <dl className="where-from">
        {distance.items.map((item) => (
          <Reasons
            key={item.id}
            what={titleOf(item.id)}
            reasons={itemStepSentences(item, proposed.has(item.id), names)}
          />
        ))}
        <Reasons
          what="All of it"
          reasons={[...stepSentences(distance.steps, names), ...(caps === undefined ? [] : [caps])]}
        />
      </dl>
      <FigureTable
        caption={`The same in figures: ${names.a} to ${names.b}`}
        columns={[
          { label: 'Item' },
          { label: capitalised(said.first), figures: true },
          { label: capitalised(said.second), figures: true },
          { label: 'Apart', figures: true },
        ]}
        rows={distance.items.map((item) => [
          titleOf(item.id),
          between(item.from),
          between(item.to),
          apartWords(item.moves, names),
        ])}
        foot={[
          ...(caps === undefined ? [] : [['What the caps move', '', '', apartWords(distance.caps, names)]]),
          [
            'The whole fence',
            between(distance.from),
            between(distance.to),
            apartWords(distance.moves, names),
          ],
        ]}
      />
      <p className="quiet">{stepsNote}</p>
    </Panel>
  )
}

function Reasons({ what, reasons }: { what: string; reasons: readonly string[] }) {
  return (
    <div>
      <dt>{what}</dt>
      {reasons.map((reason) => (
        <dd key={reason}>{reason}</dd>
      ))}
    </div>
  )
}
