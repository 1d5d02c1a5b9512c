import type { Proposal } from '../../../lib/store/proposals.ts'
import { shownMoment } from '../../../lib/words/day.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { endWords, proposalWords } from '../../../lib/words/proposalText.ts'
import { PressForm } from '../../ui/draft/PressForm.tsx'
import { HouseholdTag } from '../../ui/HouseholdTag.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { itemTitles } from './itemTitles.ts'
import type { Opened } from './opened.ts'
import { endedBy } from './positions.ts'
import { proposeAnew } from './proposalReplyActions.ts'

/** Proposals that have ended, newest first, with how and why. `all`: every proposal of the notebook. */
export function EndedProposals({
  opened,
  ended,
  all,
}: {
  opened: Opened
  ended: readonly Proposal[]
  all: readonly Proposal[]
}) {
  const { notebook, notebookId, household, document } = opened
  const titleOf = itemTitles(document)
  const again = (one: Proposal) => one.household === household && one.reply?.kind !== 'accepted'
  if (ended.length === 0) return null
  return (
    <Panel heading="Ended proposals" id="ended">
      <ul className="book-list">
        {ended.toReversed().map((one) => {
          const { id, number, household: by, items, text, at, reply } = one
          return (
            <li key={id} className="book-entry">
              <p className="history-head">
                <HouseholdTag household={by} name={householdName(notebook, by)} />
                <strong>
                  Proposal {number}, {reply ? endWords(reply.kind, endedBy(all, id)) : ''}
                </strong>
                <span className="quiet">{shownMoment(at)}</span>
              </p>
              <p>For {items.map((item) => titleOf(item.id)).join(', ')}.</p>
              {text === '' ? null : <p className="message-text">{text}</p>}
              {reply === undefined ? null : (
                <p>
                  {householdName(notebook, reply.household)}, {shownMoment(reply.at)}
                  {reply.text === '' ? '' : ': '}
                  {reply.text === '' ? null : <q>{reply.text}</q>}
                </p>
              )}
              {!again(one) ? null : (
                <PressForm
                  action={proposeAnew.bind(null, notebookId)}
                  label="Propose it anew"
                  labelFor={`proposal ${number}`}
                >
                  <input type="hidden" name="id" value={id} />
                </PressForm>
              )}
            </li>
          )
        })}
      </ul>
      {ended.some(again) ? <p className="quiet">{proposalWords.anewMeaning}</p> : null}
    </Panel>
  )
}
