import { lookOf } from '../../../lib/core/agreement/itemStatus.ts'
import { otherHousehold } from '../../../lib/core/people/household.ts'
import { dayWords, shownMoment } from '../../../lib/words/day.ts'
import { differences, differenceWords, sameInWords } from '../../../lib/words/differences.ts'
import { type HouseholdNames, householdName, householdNames } from '../../../lib/words/labels.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import { statusWords } from '../../../lib/words/statusText.ts'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { HouseholdTag } from '../../ui/HouseholdTag.tsx'
import { Status } from '../../ui/Status.tsx'
import { Workings } from '../../ui/Workings.tsx'
import { agreeToItem, takeAgreementBack } from './actions.ts'
import type { Opened, Standing } from './opened.ts'
import { type SinceSigned, statusOf } from './statusOf.ts'
import { UnansweredObjections } from './UnansweredObjections.tsx'

/** Where an item stands in a few words, for lists: who has marked it, and what was said that waits for an answer. */
export function StandingStatus({
  standing,
  opened,
  since,
}: {
  standing: Standing
  opened: Opened
  /** To tell also what changed since all signed. */
  since?: SinceSigned | undefined
}) {
  return (
    <>
      <MarkStatus standing={standing} opened={opened} since={since} />{' '}
      <UnansweredObjections opened={opened} itemKey={standing.item.key} />
    </>
  )
}

function MarkStatus({
  standing,
  opened,
  since,
}: {
  standing: Standing
  opened: Opened
  since: SinceSigned | undefined
}) {
  const status = statusOf(standing, since)
  return <Status kind={lookOf(status)} text={statusWords(status, shareNames(opened.notebook))} />
}

/** Both marks of an item, the household's own to set or take, and what last changed in it. */
export function MarkBox({
  opened,
  standing,
  back,
  since,
}: {
  opened: Opened
  standing: Standing
  back: string
  since?: SinceSigned | undefined
}) {
  const { notebook, notebookId, household } = opened
  const mine = standing.markedAt[household]
  const change = standing.lastChange
  return (
    <div className="mark-box">
      <p>
        <StandingStatus standing={standing} opened={opened} since={since} />
      </p>
      <ul className="mark-list">
        {([household, otherHousehold(household)] as const).map((one) => (
          <li key={one}>
            <HouseholdTag household={one} name={householdName(notebook, one)} />{' '}
            {standing.markedAt[one]
              ? `agreed on ${dayWords(standing.markedAt[one].toISOString().slice(0, 10))}`
              : 'has not marked it yet'}
          </li>
        ))}
      </ul>
      <PressForm
        action={(mine ? takeAgreementBack : agreeToItem).bind(null, notebookId)}
        label={mine ? 'Take your mark off' : 'Agree to this as it stands'}
        weight={mine ? 'plain' : 'main'}
        onlySaved={!mine}
      >
        <input type="hidden" name="itemKey" value={standing.item.key} />
        <input type="hidden" name="fingerprint" value={standing.fingerprint} />
        <input type="hidden" name="back" value={back} />
      </PressForm>
      {change ? (
        <Workings
          summary={`Last changed by ${householdName(notebook, change.household)}, ${shownMoment(change.at)}`}
          steps={changeWords(change.before, change.after, householdNames(notebook))}
        />
      ) : null}
    </div>
  )
}

/** What changed, in words; at least one line. */
export function changeWords(before: unknown, after: unknown, names: HouseholdNames): readonly string[] {
  if (before === null || before === undefined) return ['Added.']
  if (after === null || after === undefined) return ['Removed.']
  const rows = differences(before, after, { names }).map(differenceWords)
  return rows.length > 0 ? rows : [sameInWords]
}
