import type { ForBoth, Household } from '../../../lib/core/people/household.ts'
import { type Distance, distanceBetween } from '../../../lib/core/shares/distance.ts'
import { apartWords, distanceSentences, type Positions } from '../../../lib/words/distanceText.ts'
import { faultText } from '../../../lib/words/faultText.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { type ShareNames, shareNames } from '../../../lib/words/shareText.ts'
import { Panel } from '../../ui/Panel.tsx'
import { WayBars } from '../../ui/WayBars.tsx'
import type { Opened } from './opened.ts'
import type { Position } from './positions.ts'
import { WhereApart } from './WhereApart.tsx'

type Props = { opened: Opened; positions: ForBoth<Position> }

/** Where the two households stand: what each asks for over the whole fence, how far apart that is, and why. */
export function PositionsView({ opened, positions }: Props) {
  const { a, b } = positions
  const names = shareNames(opened.notebook)
  if (a.holds.length === 0 && b.holds.length === 0) return null
  const faults = [a, b].flatMap(({ plan }) => (plan.ok ? [] : plan.faults))
  // From the plan to the only proposal that there is; else from what a proposes to what b does.
  const ends: readonly [Household, Household] = b.holds.length === 0 ? ['b', 'a'] : ['a', 'b']
  const [from, to] = [positions[ends[0]].plan, positions[ends[1]].plan]
  const apart = from.ok && to.ok ? distanceBetween(from.value, to.value) : undefined
  if (!apart?.ok)
    return (
      <Panel heading="Where you two stand">
        {[...faults, ...(apart?.faults ?? [])].map((fault) => (
          <p key={fault.path}>This can’t be worked out yet: {faultText(fault)}</p>
        ))}
      </Panel>
    )
  const said = (household: Household) =>
    positions[household].holds.length > 0 ? `what ${names[household]} proposes` : 'the plan as it stands'
  const both: Positions = { first: said(ends[0]), second: said(ends[1]) }
  const proposed = new Set([...a.items, ...b.items].map(({ id }) => id))
  return (
    <>
      <OnOneAxis
        opened={opened}
        positions={positions}
        ends={ends}
        distance={apart.value}
        said={both}
        names={names}
      />
      <WhereApart opened={opened} distance={apart.value} said={both} names={names} proposed={proposed} />
    </>
  )
}

export type Found = { opened: Opened; distance: Distance; said: Positions; names: ShareNames }

function OnOneAxis({
  opened,
  positions,
  ends,
  distance,
  said,
  names,
}: Found & Props & { ends: readonly [Household, Household] }) {
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
              asked: household === ends[0] ? distance.from : distance.to,
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
