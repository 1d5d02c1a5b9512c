import Link from 'next/link'
import { shownMoment } from '../../../lib/words/day.ts'
import { movesWords } from '../../../lib/words/distanceText.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { moneyWords } from '../../../lib/words/money.ts'
import { endWords, potStaysWords, proposalWords } from '../../../lib/words/proposalText.ts'
import { faultTexts } from '../../../lib/words/shareFaultText.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { HouseholdTag } from '../../ui/HouseholdTag.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { Status } from '../../ui/Status.tsx'
import type { Opened } from './opened.ts'
import { ProposalPresses } from './ProposalPresses.tsx'
import type { ShownItem, ShownProposal } from './shownProposal.ts'

type Props = {
  opened: Opened
  shown: ShownProposal
  numbers: ReadonlyMap<number, number>
  endedBy?: number | undefined
}

/** One proposal that a household holds: what it has for each item, what it asks, and what can be done with it. */
export function ProposalCard({ opened, shown, numbers, endedBy }: Props) {
  const { proposal, items, ownMarkOnly } = shown
  const { household, number, text, answers, at, reply } = proposal
  const fits = items.every(({ since }) => since === 'as it was' || since === 'moved on')
  return (
    <Panel
      heading={`Proposal ${number}`}
      id={`proposal-${number}`}
      aside={
        reply !== undefined ? (
          <Status kind="open" text={endWords(reply.kind, endedBy)} />
        ) : fits ? (
          <Status kind="open" text="waits for an answer" />
        ) : (
          <Status kind="changed" text="overtaken by a later change" />
        )
      }
    >
      <p className="history-head">
        <HouseholdTag household={household} name={householdName(opened.notebook, household)} />
        {answers === undefined ? null : <span>in answer to proposal {numbers.get(answers)}</span>}
        <span className="quiet">{shownMoment(at)}</span>
      </p>
      {text === '' ? null : <p className="message-text">{text}</p>}
      {items.map((item) => (
        <ProposedItemView key={item.id} item={item} home={`/notebook/${opened.notebookId}`} />
      ))}
      <Asks opened={opened} shown={shown} />
      {reply === undefined ? (
        <ProposalPresses
          opened={opened}
          proposal={proposal}
          print={shown.shown}
          fits={fits}
          movedOn={items.some(({ since }) => since !== 'as it was')}
          ownMarkOnly={ownMarkOnly}
        />
      ) : null}
    </Panel>
  )
}

/** What a proposal has for one item. */
function ProposedItemView({ item, home }: { item: ShownItem; home: string }) {
  const { id, title, since, changed, shares, differs, sharedAnew, stays } = item
  const fits = since === 'as it was' || since === 'moved on'
  return (
    <>
      <h3>
        {since === 'gone' ? (
          title
        ) : (
          <Link href={`${home}/item/${encodeURIComponent(id)}`} prefetch={false}>
            {title}
          </Link>
        )}
      </h3>
      {since === 'as it was' ? null : <p>{sinceWords(item)}</p>}
      <Lines lines={changed} />
      {shares.length === 0 || sharedAnew ? null : <p>{proposalWords.sharedAsNow}</p>}
      {shares.map(({ pot, sentence }) => (
        <p key={pot}>
          <strong>{pot}.</strong> {sentence}
        </p>
      ))}
      {stays === undefined ? null : <p>{potStaysWords(stays)}</p>}
      {differs.length === 0 ? null : <p>{fits ? proposalWords.wouldDiffer : proposalWords.wasProposed}</p>}
      <Lines lines={differs} />
    </>
  )
}

function sinceWords({ since, changed }: ShownItem): string {
  if (since === 'gone') return proposalWords.goneSince
  if (since === 'moved on') return proposalWords.movedOn
  return changed.length === 0 ? proposalWords.changedUnknown : proposalWords.changedSince
}

function Lines({ lines }: { lines: readonly string[] }) {
  return lines.length === 0 ? null : (
    <ul>
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  )
}

/** What the whole fence would ask with this proposal, beside what it asks now. */
function Asks({ opened, shown }: { opened: Opened; shown: ShownProposal }) {
  const { distance } = shown
  const names = shareNames(opened.notebook)
  if (distance === undefined) return null
  if (!distance.ok) return <p>{faultTexts(opened.notebook, distance.faults).join(' ')}</p>
  const { to, moves, items } = distance.value
  const money = (minor: bigint) => moneyWords(minor, names.currency)
  const more = movesWords(moves, names)
  return (
    <p>
      <strong>The whole fence, after caps.</strong> {money(to.a)} of {names.a} and {money(to.b)} of {names.b}.{' '}
      {more !== undefined
        ? `It ${more} than now.`
        : `That is as it is now${items.length > 0 ? ': what moves item by item evens out' : ''}.`}
    </p>
  )
}
