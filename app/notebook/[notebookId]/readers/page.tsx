import { readerLinksOf } from '../../../../lib/store/readerLinks.ts'
import { usualReading } from '../../../../lib/words/readerText.ts'
import { Panel } from '../../../ui/Panel.tsx'
import { ReaderLinkForm } from '../../forms/ReaderLinkForm.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { ReaderLinkView } from '../../server/ReaderLinkView.tsx'
import { makeReadersLink } from '../../server/readerActions.ts'

export const metadata = { title: 'Readers' }

export default async function ReadersPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const links = await readerLinksOf(notebookId)
  const now = new Date()
  const through = new Date(now.getTime() + usualReading * 86_400_000).toISOString().slice(0, 10)
  return (
    <NotebookShell
      opened={opened}
      page="readers"
      title="Readers"
      lead="A permit office, a lender or a buyer can be shown the agreement by a link of their own. A reader can change nothing and sign nothing. Readers see the newest revision that all have signed."
      back={{ href: `/notebook/${notebookId}/record`, label: 'Record' }}
    >
      <Panel heading="Make a link for a reader">
        <ReaderLinkForm make={makeReadersLink.bind(null, notebookId)} through={through} />
      </Panel>
      <Panel heading="Links that were made">
        {links.length === 0 ? (
          <p>None yet.</p>
        ) : (
          <p>
            Each opening is on this list, of both households’ links. Opening the same thing again within a
            minute counts once. Either household can end a link.
          </p>
        )}
        {links.map((link) => (
          <ReaderLinkView key={link.id} opened={opened} link={link} now={now} />
        ))}
      </Panel>
    </NotebookShell>
  )
}
