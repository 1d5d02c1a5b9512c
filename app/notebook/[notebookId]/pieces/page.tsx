import { takeOff } from '../../../../lib/core/takeoff/takeOff.ts'
import { readPart } from '../../../../lib/forms/parts.ts'
import { fingerprintOf } from '../../../../lib/store/fingerprint.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { Panel } from '../../../ui/Panel.tsx'
import { PiecesForm } from '../../forms/PiecesForm.tsx'
import { saveNotebookPart } from '../../server/actions.ts'
import { FoundPanel } from '../../server/FindingList.tsx'
import { findingsHere } from '../../server/findingField.ts'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'

export const metadata = { title: 'Pieces at hand' }

export default async function PiecesPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { notebook } = opened
  const part = { part: 'inventory' } as const
  const draft = readPart(opened.document, part) ?? {}
  const home = `/notebook/${notebookId}`
  const here = `${home}/pieces`
  const { findings, cutJobs } = takeOff(notebook)
  const found = findingsHere(here, notebookId, notebook, findings)
  const fitting = new Set(cutJobs.flatMap((job) => job.inventory.map(({ index }) => index)))
  const unused = notebook.inventory.flatMap((_, index) => (fitting.has(index) ? [] : [index + 1]))
  return (
    <NotebookShell
      opened={opened}
      page="pieces"
      title="Pieces at hand"
      lead="What you have already, measured piece by piece. The cut plan cuts these before anything is bought."
      back={{ href: `${home}/materials`, label: 'Materials' }}
    >
      <FoundPanel notebookId={notebookId} notebook={notebook} findings={found.findings} here={here} />
      {unused.length === 0 ? null : (
        <Panel heading="Not used by the cut plan">
          <p>
            {unused.length === 1 ? 'Row' : 'Rows'} {unused.join(', ')}: nothing that has to be cut has this
            shape, outside size and wall, or the length is not said yet.
          </p>
        </Panel>
      )}
      <PiecesForm
        initial={draft}
        base={fingerprintOf(draft)}
        save={saveNotebookPart.bind(null, notebookId, part)}
        names={shareNames(notebook)}
        findings={found.atFields}
      />
    </NotebookShell>
  )
}
