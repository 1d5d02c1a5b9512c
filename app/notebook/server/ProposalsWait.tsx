import { otherHousehold } from '../../../lib/core/people/household.ts'
import { proposalsOf } from '../../../lib/store/proposals.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { proposalsBesideSigning, standingProposalWords } from '../../../lib/words/proposalText.ts'
import { ButtonLink } from '../../ui/ButtonLink.tsx'
import { Panel } from '../../ui/Panel.tsx'
import { itemTitles } from './itemTitles.ts'
import type { Opened } from './opened.ts'
import { standingProposals } from './positions.ts'

/** Beside what is to be signed: that proposals still wait. They bar nobody from signing; `noBar` says so. */
export async function ProposalsWait({
  opened,
  noBar = proposalsBesideSigning.noBar,
}: {
  opened: Opened
  noBar?: string
}) {
  const { notebook, notebookId, document } = opened
  const standing = standingProposals(await proposalsOf(notebookId))
  if (standing.length === 0) return null
  const titleOf = itemTitles(document)
  return (
    <Panel heading={proposalsBesideSigning.heading} id="proposals-wait">
      <ul>
        {standing.map(({ id, number, household, items }) => (
          <li key={id}>
            {standingProposalWords({
              number,
              by: householdName(notebook, household),
              of: householdName(notebook, otherHousehold(household)),
              items: items.map((item) => titleOf(item.id)),
            })}
          </li>
        ))}
      </ul>
      <p>{noBar}</p>
      <div className="button-row">
        <ButtonLink href={`/notebook/${notebookId}/proposals`}>Proposals</ButtonLink>
      </div>
    </Panel>
  )
}
