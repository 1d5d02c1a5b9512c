import { readPart } from '../../../../lib/forms/parts.ts'
import { fingerprintOf } from '../../../../lib/store/fingerprint.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { BuildUpsForm } from '../../forms/BuildUpsForm.tsx'
import { saveNotebookPart } from '../../server/actions.ts'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'

export const metadata = { title: 'Build-ups of your own' }

export default async function BuildUpsPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const part = { part: 'buildUps' } as const
  const draft = readPart(opened.document, part) ?? {}
  return (
    <NotebookShell
      opened={opened}
      page="build-ups"
      title="Build-ups of your own"
      lead="What you keep from one section or gate to begin the next from."
      back={{ href: `/notebook/${notebookId}/materials`, label: 'Materials' }}
    >
      {opened.notebook.buildUps.length === 0 ? (
        <p>
          None is kept yet. Open the build-up of a section or gate, save it, and press “Keep this build-up” at
          its end.
        </p>
      ) : null}
      <BuildUpsForm
        initial={draft}
        base={fingerprintOf(draft)}
        save={saveNotebookPart.bind(null, notebookId, part)}
        names={shareNames(opened.notebook)}
      />
    </NotebookShell>
  )
}
