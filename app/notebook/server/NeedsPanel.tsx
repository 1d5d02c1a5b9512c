import { otherHousehold } from '../../../lib/core/people/household.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { needsInvitation, needsStanding } from '../../../lib/words/needText.ts'
import { capitalised } from '../../../lib/words/summary/names.ts'
import { ButtonLink } from '../../ui/ButtonLink.tsx'
import { FoldedPart } from '../../ui/FoldedPart.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { NeedLists } from './NeedLists.tsx'
import type { NeedsSeen } from './needsOf.ts'
import type { Opened } from './opened.ts'

/** What both need and where it is met; before that, who has yet to say it. */
export function NeedsPanel({ opened, needs }: { opened: Opened; needs: NeedsSeen }) {
  const { notebook, notebookId, household } = opened
  const { own, otherSaid, both } = needs
  const other = capitalised(householdName(notebook, otherHousehold(household)))
  return (
    <Panel heading="What each of you needs" id="needs">
      {own === undefined ? <p>{needsInvitation}</p> : null}
      {own !== undefined && both === undefined ? (
        <p>{needsStanding({ own: true, other: otherSaid }, other)}</p>
      ) : null}
      {both === undefined ? null : (
        <FoldedPart summary="What both said, and what meets it">
          <NeedLists opened={opened} both={both} />
        </FoldedPart>
      )}
      <div className="button-row">
        <ButtonLink href={`/notebook/${notebookId}/needs`}>
          {own === undefined ? 'Say what you need' : 'Open the needs'}
        </ButtonLink>
      </div>
    </Panel>
  )
}
