import { takeOff } from '../../../../lib/core/takeoff/takeOff.ts'
import { readPart } from '../../../../lib/forms/parts.ts'
import { fingerprintOf } from '../../../../lib/store/fingerprint.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { Caution } from '../../../ui/Caution.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { LineForm } from '../../forms/LineForm.tsx'
import { saveNotebookPart } from '../../server/actions.ts'
import { FoundPanel } from '../../server/FindingList.tsx'
import { findingsHere } from '../../server/findingField.ts'
import { ItemConversation } from '../../server/ItemConversation.tsx'
import { MarkBox } from '../../server/MarkBox.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { standingOf } from '../../server/standingOf.ts'

export const metadata = { title: 'Ends and stations' }

export default async function LinePage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const part = { part: 'line' } as const
  const draft = readPart(opened.document, part) ?? {}
  const home = `/notebook/${notebookId}`
  const { notebook } = opened
  const here = `${home}/line`
  const found = findingsHere(here, notebookId, notebook, takeOff(notebook).findings)
  return (
    <NotebookShell
      opened={opened}
      page="line"
      title="Ends and stations"
      lead="Where the line runs, and where the fence stands off it."
      back={{ href: home, label: 'The line' }}
    >
      <Panel heading="Where this stands">
        <MarkBox opened={opened} standing={standingOf(opened, 'line')} back={here} />
      </Panel>
      <FoundPanel notebookId={notebookId} notebook={notebook} findings={found.findings} here={here} />
      <Caution title="Before you rely on it">
        <p>
          Have the line found by a licensed surveyor where it is in doubt. Signing over an uncertain line can
          in some places make a boundary.
        </p>
      </Caution>
      <LineForm
        initial={draft}
        base={fingerprintOf(draft)}
        save={saveNotebookPart.bind(null, notebookId, part)}
        names={shareNames(notebook)}
        findings={found.atFields}
      />
      <ItemConversation opened={opened} itemKey="line" />
    </NotebookShell>
  )
}
