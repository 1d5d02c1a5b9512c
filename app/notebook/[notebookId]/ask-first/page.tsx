import Link from 'next/link'
import { readPart } from '../../../../lib/forms/parts.ts'
import { fingerprintOf } from '../../../../lib/store/fingerprint.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { Caution } from '../../../ui/Caution.tsx'
import { ChecksForm } from '../../forms/ChecksForm.tsx'
import { saveNotebookPart } from '../../server/actions.ts'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'

export const metadata = { title: 'Ask first' }

export default async function AskFirstPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const part = { part: 'checks' } as const
  const draft = readPart(opened.document, part) ?? {}
  const open = opened.notebook.checks.filter((check) => !check.done).length
  return (
    <NotebookShell
      opened={opened}
      page="ask-first"
      title="Ask first"
      lead={`Whom to ask before anyone digs or builds: who asks, when, and what was said. ${open === 0 ? 'Nothing is open.' : `${open} still open.`}`}
    >
      <Caution title="Local rules differ">
        <p>
          This list is an example and no ruling. Ask the local permit office, and have buried services marked
          before digging. A pool barrier, a retaining wall, or a fence that must stand up to wind or livestock
          needs a licensed designer.
        </p>
      </Caution>
      <p>
        What is due on a day, or runs out on one, stands under{' '}
        <Link href={`/notebook/${notebookId}/dates`} prefetch={false}>
          Dates
        </Link>
        .
      </p>
      <ChecksForm
        initial={draft}
        base={fingerprintOf(draft)}
        save={saveNotebookPart.bind(null, notebookId, part)}
        names={shareNames(opened.notebook)}
      />
    </NotebookShell>
  )
}
