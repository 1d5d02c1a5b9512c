import { otherHousehold } from '../../../../lib/core/people/household.ts'
import { householdName } from '../../../../lib/words/labels.ts'
import { needsStanding } from '../../../../lib/words/needText.ts'
import { capitalised } from '../../../../lib/words/summary/names.ts'
import { Panel } from '../../../ui/Panel.tsx'
import { NeedsForm } from '../../forms/NeedsForm.tsx'
import { NeedLists } from '../../server/NeedLists.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { sayNeeds } from '../../server/needsActions.ts'
import { needsOf } from '../../server/needsOf.ts'
import { openNotebook } from '../../server/opened.ts'
import { needsDraft } from '../../server/typedNeeds.ts'

export const metadata = { title: 'Needs' }

export default async function NeedsPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { notebook, household } = opened
  const { own, otherSaid, both } = await needsOf(notebookId, household)
  const other = capitalised(householdName(notebook, otherHousehold(household)))
  return (
    <NotebookShell
      opened={opened}
      page="needs"
      title="What each of you needs"
      lead="Needs before prices. What you write here is kept apart from the plan until both have said theirs."
      back={{ href: `/notebook/${notebookId}`, label: 'The line' }}
    >
      <Panel heading="Where this stands">
        <p>{needsStanding({ own: own !== undefined, other: otherSaid }, other)}</p>
        {both === undefined ? null : <NeedLists opened={opened} both={both} />}
        {both === undefined ? null : (
          <p>A section says on its own page which needs it meets. Both mark it there, as with any change.</p>
        )}
      </Panel>
      <Panel heading={`What ${householdName(notebook, household)} needs`}>
        <p>
          Say what matters to you, not how to build it.{' '}
          {both === undefined
            ? 'You can change it until then, and afterwards too.'
            : 'You can say it anew; the newest counts, and both see it.'}{' '}
          It binds nobody.
        </p>
        <NeedsForm initial={needsDraft(own ?? [])} save={sayNeeds.bind(null, notebookId)} />
      </Panel>
    </NotebookShell>
  )
}
