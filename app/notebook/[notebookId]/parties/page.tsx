import { currencies } from '../../../../lib/core/amounts/currency.ts'
import { readPart } from '../../../../lib/forms/parts.ts'
import { fingerprintOf } from '../../../../lib/store/fingerprint.ts'
import { Panel } from '../../../ui/Panel.tsx'
import { HeadingForm } from '../../forms/HeadingForm.tsx'
import { saveNotebookPart } from '../../server/actions.ts'
import { ItemConversation } from '../../server/ItemConversation.tsx'
import { MarkBox } from '../../server/MarkBox.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { standingOf } from '../../server/standingOf.ts'

export const metadata = { title: 'Households and parties' }

export default async function PartiesPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const part = { part: 'heading' } as const
  const draft = readPart(opened.document, part) ?? {}
  const home = `/notebook/${notebookId}`
  return (
    <NotebookShell
      opened={opened}
      page="parties"
      title="Households and parties"
      lead="Who the two households are, and everyone who signs for them. All parties of one household sign through its one link."
      back={{ href: home, label: 'The line' }}
    >
      <Panel heading="Where this stands">
        <MarkBox opened={opened} standing={standingOf(opened, 'parties')} back={`${home}/parties`} />
      </Panel>
      <HeadingForm
        initial={draft}
        base={fingerprintOf(draft)}
        save={saveNotebookPart.bind(null, notebookId, part)}
        saveLabel="Save households and parties"
        currencies={currencies()}
      />
      <ItemConversation opened={opened} itemKey="parties" />
    </NotebookShell>
  )
}
