import { type Household, otherHousehold } from '../../../lib/core/people/household.ts'
import type { Distance } from '../../../lib/core/shares/distance.ts'
import { middleShare } from '../../../lib/core/shares/middleShare.ts'
import { dayWords } from '../../../lib/words/day.ts'
import { apartInAllWords, distanceSentences, type SaidPositions } from '../../../lib/words/distanceText.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { proposalWords, sinceProposedWords } from '../../../lib/words/proposalText.ts'
import { faultTexts } from '../../../lib/words/shareFaultText.ts'
import { type ShareNames, shareNames } from '../../../lib/words/shareText.ts'
import { ButtonLink } from '../../ui/ButtonLink.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { WayBars } from '../../ui/WayBars.tsx'
import { itemTitles } from './itemTitles.ts'
import type { Opened } from './opened.ts'
import { type End, type Positions, positionsApart } from './positions.ts'
import { WhereApart } from './WhereApart.tsx'

type Props = { opened: Opened; positions: Positions }

/** Where the two households stand: what each asks for over the whole fence, how far apart that is, and why. */
export function PositionsView({ opened, positions }: Props) {
  const { a, b } = positions
  const names = shareNames(opened.notebook)
  if (a.holds.length === 0 && b.holds.length === 0) return null
  const compared = positionsApart(opened, positions)
  if (compared === undefined)
    return (
      <Panel heading="Where you two stand">
        <p>{proposalWords.noFigures}</p>
        <SinceThen opened={opened} positions={positions} />
      </Panel>
    )
  const { ends, apart } = compared
  if (!apart.ok)
    return (
      <Panel heading="Where you two stand">
        {faultTexts(opened.notebook, apart.faults).map((text) => (
          <p key={text}>This can’t be worked out yet. {text}</p>
        ))}
        <SinceThen opened={opened} positions={positions} />
      </Panel>
    )
  const said = (end: End) => (end === 'plan' ? 'the plan as it stands' : `what ${names[end]} proposes`)
  const both = { first: said(ends[0]), second: said(ends[1]) }
  const proposed = new Set([...a.items, ...b.items].map(({ found }) => found.id))
  const found = { opened, distance: apart.value, said: both, names }
  return (
    <>
      <OnOneAxis {...found} positions={positions} ends={ends} />
      <WhereApart {...found} proposed={proposed} />
    </>
  )
}

export type Found = { opened: Opened; distance: Distance; said: SaidPositions; names: ShareNames }

function OnOneAxis({
  opened,
  positions,
  ends,
  distance,
  said,
  names,
}: Found & Props & { ends: readonly [End, Household] }) {
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const { statement } = opened
  const plan = statement.ok
    ? [{ label: 'The plan as it stands', asked: statement.value.asked, chosen: true }]
    : []
  const rows = [
    ...plan,
    ...ends.flatMap((end, at) =>
      end === 'plan'
        ? []
        : [
            {
              label: `What ${names[end]} proposes`,
              asked: at === 0 ? distance.from : distance.to,
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
      aside={<span className="figure">{apartInAllWords(distance, names)}</span>}
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
      {distanceSentences(distance, said, names, itemTitles(opened.document)).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <SinceThen opened={opened} positions={positions} />
      {distance.items.some((item) => middleShare(item) !== undefined) ? (
        <div className="button-row">
          <ButtonLink href={middleHref(opened, positions)}>Propose the middle, item by item</ButtonLink>
        </div>
      ) : null}
    </Panel>
  )
}

/** Which figures are for an item that was changed since it was proposed for, and what has no figure any more. */
function SinceThen({ opened, positions }: Props) {
  const titleOf = itemTitles(opened.document)
  return (['a', 'b'] as const).flatMap((household) =>
    [...positions[household].items, ...positions[household].apart].flatMap(({ proposal, found }) => {
      const words = sinceProposedWords(found, {
        number: proposal.number,
        name: householdName(opened.notebook, household),
        day: dayWords(proposal.at.toISOString().slice(0, 10)),
        title: titleOf(found.id),
      })
      return words === undefined ? [] : [<p key={`${proposal.id} ${found.id}`}>{words}</p>]
    }),
  )
}

/** Where the middle is proposed, as an answer to the other household's newest proposal that stands. */
function middleHref({ notebookId, household }: Opened, positions: Positions): string {
  const theirs = positions[otherHousehold(household)].holds.findLast(({ reply }) => reply === undefined)
  const answers = theirs === undefined ? '' : `&answers=${theirs.id}`
  return `/notebook/${notebookId}/proposals/new?middle=yes${answers}`
}
