import type { ForBoth } from '../../../lib/core/people/household.ts'
import { type Distance, distanceBetween } from '../../../lib/core/shares/distance.ts'
import {
  apartWords,
  capsSentence,
  distanceSentences,
  itemStepSentences,
  type Positions,
  stepSentences,
  stepsNote,
} from '../../../lib/words/distanceText.ts'
import { faultText } from '../../../lib/words/faultText.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { type ShareNames, shareNames } from '../../../lib/words/shareText.ts'
import { FigureTable } from '../../ui/FigureTable.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { WayBars } from '../../ui/WayBars.tsx'
import { itemTitles } from './itemTitles.ts'
import type { Opened } from './opened.ts'
import type { Position } from './positions.ts'

type Props = { opened: Opened; positions: ForBoth<Position> }

/** Where the two households stand: what each asks for over the whole fence, how far apart that is, and why. */
export function PositionsView({ opened, positions }: Props) {
  const { a, b } = positions
  const names = shareNames(opened.notebook)
  if (a.holds.length === 0 && b.holds.length === 0) return null
  const faults = [a, b].flatMap(({ plan }) => (plan.ok ? [] : plan.faults))
  const { caps } = opened.inForce
  const apart =
    a.plan.ok && b.plan.ok ? distanceBetween({ ...a.plan.value, caps }, { ...b.plan.value, caps }) : undefined
  if (!apart?.ok)
    return (
      <Panel heading="Where you two stand">
        {[...faults, ...(apart?.faults ?? [])].map((fault) => (
          <p key={fault.path}>This can’t be worked out yet: {faultText(fault)}</p>
        ))}
      </Panel>
    )
  const said = (household: 'a' | 'b') =>
    positions[household].holds.length > 0 ? `what ${names[household]} proposes` : 'the plan as it stands'
  const both: Positions = { first: said('a'), second: said('b') }
  const proposed = new Set([...a.items, ...b.items].map(({ id }) => id))
  return (
    <>
      <OnOneAxis opened={opened} positions={positions} distance={apart.value} said={both} names={names} />
      <WhereFrom opened={opened} distance={apart.value} said={both} names={names} proposed={proposed} />
    </>
  )
}

type Found = { opened: Opened; distance: Distance; said: Positions; names: ShareNames }

function OnOneAxis({ opened, positions, distance, said, names }: Found & Props) {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const { statement } = opened
  const plan = statement.ok
    ? [{ label: 'The plan as it stands', asked: statement.value.asked, chosen: true }]
    : []
  const rows = [
    ...plan,
    ...(['a', 'b'] as const).flatMap((household) =>
      positions[household].holds.length === 0
        ? []
        : [
            {
              label: `What ${names[household]} proposes`,
              asked: household === 'a' ? distance.from : distance.to,
              chosen: false,
            },
          ],
    ),
  ]
  const [most = 0n] = rows
    .map(({ asked }) => asked.a + asked.b)
    .sort((left, right) => (left < right ? 1 : -1))
  return (
    <Panel
      heading="Where you two stand"
      aside={<span className="figure">{apartWords(distance.moves, names)} apart</span>}
    >
      <WayBars
        bars={rows.map(({ label, asked, chosen }) => ({
          label,
          a: Number(asked.a),
          b: Number(asked.b),
          aText: money(asked.a),
          bText: money(asked.b),
          chosen,
        }))}
        middle={Number(distance.middle.a)}
        nameA={names.a}
        nameB={names.b}
        label="What the whole fence asks of the two households, after caps"
        zeroText={money(0n)}
        totalText={money(most)}
      />
      {distanceSentences(distance, said, names).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </Panel>
  )
}

function WhereFrom({ opened, distance, said, names, proposed }: Found & { proposed: ReadonlySet<string> }) {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const between = (asked: ForBoth<bigint>) => `${money(asked.a)} to ${money(asked.b)}`
  const titleOf = itemTitles(opened.document)
  const caps = capsSentence(distance.caps, names)
  if (distance.items.length === 0) return null
  return (
    <Panel heading="Where the distance comes from">
      <FigureTable
        caption={`From ${said.first} to ${said.second}: ${names.a} to ${names.b}`}
        columns={[
          { label: 'Item' },
          { label: 'From', figures: true },
          { label: 'To', figures: true },
          { label: 'Apart', figures: true },
          { label: 'Where it comes from' },
        ]}
        rows={distance.items.map((item) => [
          titleOf(item.id),
          between(item.from),
          between(item.to),
          apartWords(item.moves, names),
          <Sentences key="why" lines={itemStepSentences(item, proposed.has(item.id), names)} />,
        ])}
        foot={[
          ...(caps === undefined ? [] : [['Caps', '', '', apartWords(distance.caps, names), caps]]),
          [
            'The whole fence',
            between(distance.from),
            between(distance.to),
            apartWords(distance.moves, names),
            <Sentences key="why" lines={stepSentences(distance.steps, names)} />,
          ],
        ]}
      />
      <p className="quiet">{stepsNote}</p>
    </Panel>
  )
}

function Sentences({ lines }: { lines: readonly string[] }) {
  return lines.map((line) => (
    <span key={line} className="table-line">
      {line}
    </span>
  ))
}
