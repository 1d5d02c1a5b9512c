import { HistoryView } from '../../server/HistoryView.tsx'
import { type AddressFields, historyAsked } from '../../server/historyAsked.ts'
import { historyShown } from '../../server/historyShown.ts'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { pageOfChange } from '../../server/pageOfChange.ts'
import { UndoPanel } from '../../server/UndoPanel.tsx'

export const metadata = { title: 'Changes' }

export default async function ChangesPage({
  params,
  searchParams,
}: {
  params: Promise<{ notebookId: string }>
  searchParams?: Promise<AddressFields>
}) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const asked = historyAsked((await searchParams) ?? {})
  const shown = await historyShown(notebookId, opened.document, opened.revisions, asked)
  const home = `/notebook/${notebookId}`
  return (
    <NotebookShell
      opened={opened}
      page="changes"
      title="Changes"
      lead="All that happened in this notebook: who, when, and what was before and after. Nothing here can be changed."
      back={{ href: `${home}/record`, label: 'Record' }}
    >
      {await UndoPanel({ opened, titles: shown.titles })}
      <HistoryView
        shown={shown}
        notebook={opened.notebook}
        here={`${home}/changes`}
        file={`${home}/history.json`}
        pageOf={(entry) => pageOfChange(opened, entry)}
      />
    </NotebookShell>
  )
}
