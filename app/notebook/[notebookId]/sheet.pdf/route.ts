import { notFound } from 'next/navigation'
import { askedRevision } from '../../server/askedRevision.ts'
import { download, fileName } from '../../server/download.ts'
import { openNotebook } from '../../server/opened.ts'
import { isSheetName, sheetOf } from '../../server/sheetOf.ts'
import { paperDate, revisionSummary } from '../../server/summaryOf.ts'

/** One page about a revision: `?for=permit`, `buyer` or `records`, `&revision=2`. */
export async function GET(
  request: Request,
  { params }: { params: Promise<{ notebookId: string }> },
): Promise<Response> {
  const opened = await openNotebook((await params).notebookId)
  const frozen = askedRevision(opened, request) ?? notFound()
  const asked = new URL(request.url).searchParams.get('for') ?? ''
  if (!isSheetName(asked)) notFound()
  const pdf = await sheetOf(
    asked,
    revisionSummary(frozen, opened.revisions),
    opened.accounts,
    paperDate(frozen),
  )
  return download(
    pdf,
    fileName(opened.notebook.title, `-revision-${frozen.revision.number}-${asked}.pdf`),
    'application/pdf',
  )
}
