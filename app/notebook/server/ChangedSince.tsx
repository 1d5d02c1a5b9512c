import Link from 'next/link'
import { agreedItems } from '../../../lib/core/agreement/agreedItems.ts'
import { otherHousehold } from '../../../lib/core/people/household.ts'
import { type Change, changesOfOther } from '../../../lib/store/changes.ts'
import { seenUpTo } from '../../../lib/store/looks.ts'
import { changedSinceWords, moreChangesWords } from '../../../lib/words/changedSinceText.ts'
import { shownMoment } from '../../../lib/words/day.ts'
import {
  type HistoryGroup,
  happeningTitle,
  happeningWords,
  historyGroups,
  historyTitles,
  moreLikeItWords,
} from '../../../lib/words/happeningText.ts'
import { householdName, householdNames } from '../../../lib/words/labels.ts'
import { ButtonLink } from '../../ui/ButtonLink.tsx'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { FoldedPart } from '../../ui/FoldedPart.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { historyAddress } from './historyAsked.ts'
import { itemTitles } from './itemTitles.ts'
import { haveSeenChanges } from './lookActions.ts'
import { changeWords } from './MarkBox.tsx'
import type { Opened } from './opened.ts'
import { pageOfChange } from './pageOfChange.ts'
import { type Told, toldTogether } from './toldTogether.ts'

const most = 200
const shown = 8
/** The rest of what is shown is folded away. */
const atOnce = 2

/** What the other household did since this one last said that it has seen everything; nothing where it did nothing. */
export async function ChangedSince({ opened }: { opened: Opened }) {
  const { notebookId, household, notebook, document } = opened
  const after = await seenUpTo(notebookId, household)
  const changes = await changesOfOther({ notebookId, household, after, limit: most })
  const [newest] = changes
  if (newest === undefined) return null
  const titles = historyTitles(changes.toReversed(), agreedItems(document))
  const titleOf = itemTitles(document)
  const other = householdName(notebook, otherHousehold(household))
  const told = toldTogether(changes)
  const entry = ({ newest: change, more }: Told) => {
    const title = happeningTitle(change, titles)
    const page = pageOfChange(opened, change)
    const words =
      change.kind === 'edit'
        ? changeWords(change.before, change.after, householdNames(notebook)).slice(0, 3)
        : [happeningWords(change, titles.get(change.itemKey) ?? '', titleOf)]
    return (
      <li key={change.id}>
        <strong>
          {page === undefined ? (
            title
          ) : (
            <Link href={page} prefetch={false}>
              {title}
            </Link>
          )}
        </strong>{' '}
        <span className="quiet">{shownMoment(change.at)}</span>
        <br />
        {words.join('; ')}
        {more.length === 0 ? null : (
          <>
            {' '}
            <Link href={allOfItsKind(notebookId, change.kind)} prefetch={false}>
              {moreLikeItWords(change.kind, more.length)}
            </Link>
          </>
        )}
      </li>
    )
  }
  return (
    <Panel heading={changedSinceWords(other)} id="changed">
      <ul className="changed-since">{told.slice(0, atOnce).map(entry)}</ul>
      {told.length > atOnce ? (
        <FoldedPart summary={moreChangesWords(told.length - atOnce, changes.length === most)}>
          <ul className="changed-since">{told.slice(atOnce, shown).map(entry)}</ul>
          {told.length > shown ? (
            <p>{moreChangesWords(told.length - shown, changes.length === most)}</p>
          ) : null}
        </FoldedPart>
      ) : null}
      <div className="button-row">
        <PressForm action={haveSeenChanges.bind(null, notebookId)} label="We have seen this">
          <input type="hidden" name="newest" value={newest.id} />
        </PressForm>
        <ButtonLink href={`/notebook/${notebookId}/changes`}>All changes</ButtonLink>
      </div>
    </Panel>
  )
}

/** The history narrowed down to entries like these. */
function allOfItsKind(notebookId: string, kind: Change['kind']): string {
  const group = (Object.keys(historyGroups) as HistoryGroup[]).find((name) =>
    (historyGroups[name].kinds as readonly string[]).includes(kind),
  )
  return historyAddress(`/notebook/${notebookId}/changes`, { ...(group && { group }), page: 1 }, 1)
}
