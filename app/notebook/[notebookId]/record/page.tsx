import { sealsOf } from '../../../../lib/store/sealedPapers.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { ImportForm } from '../../../ui/work/ImportForm.tsx'
import { PaperLink } from '../../../ui/work/PaperLink.tsx'
import { AmendmentView } from '../../server/AmendmentView.tsx'
import { RecordAccounts } from '../../server/account/RecordAccounts.tsx'
import { amendmentOf } from '../../server/amendment.ts'
import { replaceByFile } from '../../server/fileActions.ts'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { ReadersLink } from '../../server/ReadersLink.tsx'
import { RecordFiles } from '../../server/RecordFiles.tsx'
import { RecordRevisions } from '../../server/RecordRevisions.tsx'
import { largestImport } from '../../server/readImport.ts'
import { draftDiffers } from '../../server/standingRevision.ts'

export const metadata = { title: 'Record' }

export default async function RecordPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const revisions = opened.revisions
  const seals = await sealsOf(notebookId)
  const amends = amendmentOf(opened.document, revisions)
  // What all have signed and nobody has changed since is the paper to take.
  const standsSigned = revisions[0]?.stillToSign.length === 0 && !draftDiffers(opened, revisions[0])
  const home = `/notebook/${notebookId}`
  return (
    <NotebookShell
      opened={opened}
      page="record"
      title="Record"
      lead="What to keep: the summary, the notebook file, and what was signed when."
    >
      <Panel heading="The notebook as it stands">
        <div className="button-row">
          <PaperLink href={`${home}/summary.pdf`} weight={standsSigned ? 'plain' : 'main'}>
            Draft summary (PDF)
          </PaperLink>
          <ButtonLink href={`${home}/notebook.json`} download>
            Notebook file (JSON)
          </ButtonLink>
          <ButtonLink href={`${home}/changes`}>Changes</ButtonLink>
          <ButtonLink href={`${home}/closing`}>Closing</ButtonLink>
          <ButtonLink href={`${home}/links`}>Links</ButtonLink>
        </div>
        {opened.unknownKeys.length > 0 ? (
          <>
            <p>
              The file has keys that this program does not know. They are kept and exported; nobody can sign
              while they are there.
            </p>
            <ul>
              {opened.unknownKeys.map((path) => (
                <li key={path}>
                  <code>{path}</code>
                </li>
              ))}
            </ul>
          </>
        ) : null}
      </Panel>
      <RecordRevisions opened={opened} seals={seals} standsSigned={standsSigned} />
      {amends && amends.changes.length > 0 ? (
        <AmendmentView
          amends={amends}
          heading={`Changed in the draft since revision ${amends.number} was signed`}
          id="amendment"
        />
      ) : null}
      <RecordAccounts opened={opened} />
      <RecordFiles notebookId={notebookId} />
      <Panel heading="For somebody who only reads">
        <p>
          A permit office, a lender or a buyer can be given a link that shows what you choose, until a day
          that you choose. You see when it was opened, and either of you can end it.
        </p>
        <div className="button-row">
          <ReadersLink notebookId={notebookId} />
        </div>
      </Panel>
      <Panel heading="Check a record">
        <p>
          Anyone can check a locked copy, without a link: whether the seal holds, and whether what is inside
          agrees with what is printed.
        </p>
        <div className="button-row">
          <ButtonLink href="/check">Check a record</ButtonLink>
        </div>
      </Panel>
      <Panel heading="Put a notebook file in its place">
        <p>
          The file replaces the whole notebook, the books included. Marks come off what it changes; revisions,
          signatures and the history stay as they are. What it brings into the book is entered by you, and all
          that it changes is told under Changes.
        </p>
        <ImportForm
          action={replaceByFile.bind(null, notebookId)}
          label="Put this file in its place"
          fileLabel="Notebook file (its name ends in .json; at most 2 MB)"
          largest={largestImport}
          confirm="Replace the whole notebook by this file? What it changes loses both marks."
        />
      </Panel>
    </NotebookShell>
  )
}
