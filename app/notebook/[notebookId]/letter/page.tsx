import { emptyLetter } from '../../../../lib/core/agreement/firstLetter.ts'
import { readPart } from '../../../../lib/forms/parts.ts'
import { hasLink, openInvitation } from '../../../../lib/store/entryKeys.ts'
import { fingerprintOf } from '../../../../lib/store/fingerprint.ts'
import { householdName } from '../../../../lib/words/labels.ts'
import { letterCaution } from '../../../../lib/words/letter/letterFaultText.ts'
import { proposedFence } from '../../../../lib/words/letter/proposedFence.ts'
import { shareNames } from '../../../../lib/words/shareText.ts'
import { Caution } from '../../../ui/Caution.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { LetterForm } from '../../forms/LetterForm.tsx'
import { saveNotebookPart } from '../../server/actions.ts'
import { HandOutPart } from '../../server/HandOutPart.tsx'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'

export const metadata = { title: 'The first letter' }

export default async function LetterPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const { document, notebook } = opened
  const part = { part: 'letter' } as const
  const draft = readPart(document, part) ?? {}
  const [bothIn, waiting] = [await hasLink(notebookId, 'b'), await openInvitation(notebookId)]
  const suggested = { ...emptyLetter, proposed: proposedFence(notebook) }
  return (
    <NotebookShell
      opened={opened}
      page="letter"
      title="The first letter"
      lead={`One page to ${householdName(notebook, 'b')}: what is wrong, what you propose, where, at what cost, shared how and why, when, and how to answer. It is no part of what is signed.`}
      back={{ href: `/notebook/${notebookId}/links`, label: 'Links' }}
    >
      <Panel heading="Its words and days">
        <p>
          Where the fence stands, what it is estimated to cost and how it would be shared come out of the
          notebook as it stands.
        </p>
        <LetterForm
          initial={notebook.letter === undefined ? { letter: suggested } : draft}
          base={fingerprintOf(draft)}
          save={saveNotebookPart.bind(null, notebookId, part)}
          names={shareNames(notebook)}
        />
        <Caution title="Local law">
          <p>{letterCaution}</p>
        </Caution>
      </Panel>
      <HandOutPart opened={opened} bothIn={bothIn} waiting={waiting} />
    </NotebookShell>
  )
}
