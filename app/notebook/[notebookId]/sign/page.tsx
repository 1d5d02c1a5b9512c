import { agreementOnPaper } from '../../../../lib/words/signingWords.ts'
import { summaryContent } from '../../../../lib/words/summary/summaryContent.ts'
import { ButtonLink } from '../../../ui/ButtonLink.tsx'
import { Panel } from '../../../ui/Panel.tsx'
import { PaperLink } from '../../../ui/work/PaperLink.tsx'
import { AmendmentView } from '../../server/AmendmentView.tsx'
import { amendmentOf } from '../../server/amendment.ts'
import { keyTrouble } from '../../server/lockedCopy.ts'
import { NotebookShell } from '../../server/NotebookShell.tsx'
import { openNotebook } from '../../server/opened.ts'
import { ProposalsWait } from '../../server/ProposalsWait.tsx'
import { PutUpPart } from '../../server/PutUpPart.tsx'
import { SigningPart } from '../../server/SigningPart.tsx'
import { SummaryView } from '../../server/SummaryView.tsx'
import { draftDiffers } from '../../server/standingRevision.ts'
import { draftSummary, revisionSummary } from '../../server/summaryOf.ts'

export const metadata = { title: 'Sign' }

export default async function SignPage({ params }: { params: Promise<{ notebookId: string }> }) {
  const { notebookId } = await params
  const opened = await openNotebook(notebookId)
  const [newest] = opened.revisions
  const differs = newest === undefined || draftDiffers(opened, newest)
  const home = `/notebook/${notebookId}`
  const trouble = newest ? await keyTrouble(newest) : undefined
  // What is to be signed next: the draft where it differs, else the revision that is up for signing.
  const amends = differs
    ? amendmentOf(opened.document, opened.revisions)
    : newest && newest.stillToSign.length > 0
      ? amendmentOf(JSON.parse(newest.revision.canonicalText), opened.revisions, newest.revision.number)
      : undefined
  const summary = newest ? revisionSummary(newest, opened.revisions) : draftSummary(opened)
  return (
    <NotebookShell
      opened={opened}
      page="sign"
      title="Sign"
      lead={
        newest?.stillToSign.length === 0
          ? `Revision ${newest.revision.number} is signed by all parties of both households.`
          : 'Nothing binds anyone until all parties of both households have signed. Agreeing tonight and signing days later is the normal case.'
      }
    >
      {differs || newest.stillToSign.length > 0 ? await ProposalsWait({ opened }) : null}
      {newest ? <SigningPart opened={opened} frozen={newest} trouble={trouble} /> : null}
      {newest && differs ? (
        <Panel heading="The notebook has changed since">
          <p>What was changed belongs to the next revision. The one that stands is not touched by it.</p>
        </Panel>
      ) : null}
      {amends ? (
        <AmendmentView amends={amends} heading={`What the amendment changes in revision ${amends.number}`} />
      ) : null}
      {differs ? <PutUpPart opened={opened} number={(newest?.revision.number ?? 0) + 1} /> : null}
      <Panel
        heading={
          newest ? `The agreement, revision ${newest.revision.number}` : 'The agreement so far, a draft'
        }
        aside={
          newest ? undefined : (
            <div className="button-row">
              <ButtonLink href={`${home}/paper`}>Page by page</ButtonLink>
              <PaperLink href={`${home}/summary.pdf`}>Draft summary (PDF)</PaperLink>
            </div>
          )
        }
      >
        <p className="on-paper-only">{agreementOnPaper(newest?.revision.number)}</p>
        <div className="on-screen-only">
          <SummaryView blocks={summaryContent(summary)} notebook={summary.notebook} />
        </div>
      </Panel>
    </NotebookShell>
  )
}
