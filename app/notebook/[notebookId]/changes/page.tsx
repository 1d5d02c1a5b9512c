import { agreedItems } from '../../../../lib/core/agreement/agreedItems.ts'
import { changesOf } from '../../../../lib/store/changes.ts'
import { momentWords } from '../../../../lib/words/day.ts'
import { changedItemTitle } from '../../../../lib/words/itemWords.ts'
import { householdName } from '../../../../lib/words/labels.ts'
import { HouseholdTag } from '../../../ui/HouseholdTag.tsx'
import { Page } from '../../../ui/Page.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { changeWords } from '../../server/MarkBox.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'

export const metadata = { title: 'Changes' }

/** As many as a person reads; the store keeps them all. */
const shown = 200

export default async function ChangesPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const changes = await changesOf(notebookId, { limit: shown })
  const items = agreedItems(opened.document)
  return (
    <NotebookShell opened={opened} page="record">
      <Page
        title="Changes"
        lead="Who changed what, newest first."
        back={{ href: `/notebook/${notebookId}/record`, label: 'Record' }}
      >
        {changes.length === 0 ? <p>Nothing has been changed yet.</p> : null}
        {changes.map((change) => (
          <Panel key={change.id} heading={changedItemTitle(change, items)} aside={momentWords(change.at)}>
            <p>
              <HouseholdTag
                household={change.household}
                name={householdName(opened.notebook, change.household)}
              />
            </p>
            <ul>
              {changeWords(change.before, change.after).map((words) => (
                <li key={words}>{words}</li>
              ))}
            </ul>
          </Panel>
        ))}
      </Page>
    </NotebookShell>
  )
}
