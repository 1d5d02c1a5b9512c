import { agreementText } from '../../../../lib/core/agreement/canonicalText.ts'
import { printFonts } from '../../../../lib/files/printFonts.ts'
import { summaryPaper } from '../../../../lib/pdf/summaryPaper.ts'
import { askedRevision } from '../../server/askedRevision.ts'
import { download, fileName } from '../../server/download.ts'
import { openNotebook } from '../../server/opened.ts'
import { draftSummary, paperDate, revisionSummary } from '../../server/summaryOf.ts'

/** The summary: of the revision that is asked for, or of the notebook as it stands, marked as a draft. */
export async function GET(
  request: Request,
  { params }: { params: Promise<{ notebookId: string }> },
): Promise<Response> {
  const opened = await openNotebook((await params).notebookId)
  const frozen = askedRevision(opened, request)
  const pdf = frozen
    ? await summaryPaper(
        revisionSummary(frozen),
        frozen.revision.canonicalText,
        printFonts(),
        paperDate(frozen),
      )
    : await summaryPaper(draftSummary(opened), agreementText(opened.document), printFonts())
  const ending = frozen ? `-revision-${frozen.revision.number}.pdf` : '-draft.pdf'
  return download(pdf, fileName(opened.notebook.title, ending), 'application/pdf')
}
