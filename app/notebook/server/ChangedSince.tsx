import { agreedItems } from '../../../lib/core/agreement/agreedItems.ts'
import { otherHousehold } from '../../../lib/core/people/household.ts'
import { type Change, changesOfOther } from '../../../lib/store/changes.ts'
import { seenUpTo } from '../../../lib/store/looks.ts'
import { changedSinceWords, moreChangesWords } from '../../../lib/words/changedSinceText.ts'
import { momentWords } from '../../../lib/words/day.ts'
import { happeningWords, historyTitles } from '../../../lib/words/happeningText.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { ButtonLink } from '../../ui/ButtonLink.tsx'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { FoldedPart } from '../../ui/FoldedPart.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { haveSeenChanges } from './lookActions.ts'
import { changeWords } from './MarkBox.tsx'
import type { Opened } from './opened.ts'

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
  const other = householdName(notebook, otherHousehold(household))
  const entry = (change: Change) => {
    const title = titles.get(change.itemKey) ?? ''
    const words =
      change.kind === 'edit'
        ? changeWords(change.before, change.after).slice(0, 3)
        : [happeningWords(change, title)]
    return (
      <li key={change.id}>
        <strong>{title}</strong> <span className="quiet">{momentWords(change.at)}</span>
        <br />
        {words.join('; ')}
      </li>
    )
  }
  return (
    <Panel heading={changedSinceWords(other)} id="changed">
      <ul className="changed-since">{changes.slice(0, atOnce).map(entry)}</ul>
      {changes.length > atOnce ? (
        <FoldedPart summary={moreChangesWords(changes.length - atOnce, changes.length === most)}>
          <ul className="changed-since">{changes.slice(atOnce, shown).map(entry)}</ul>
          {changes.length > shown ? (
            <p>{moreChangesWords(changes.length - shown, changes.length === most)}</p>
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
