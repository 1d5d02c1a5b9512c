import { notFound } from 'next/navigation'
import { takeOff } from '../../../../lib/core/takeoff/takeOff.ts'
import { printFonts } from '../../../../lib/files/printFonts.ts'
import { sheetPdf } from '../../../../lib/pdf/sheetPdf.ts'
import { notebookTitle } from '../../../../lib/words/labels.ts'
import { buyerSheet } from '../../../../lib/words/sheets/buyerSheet.ts'
import { landRecordsPage } from '../../../../lib/words/sheets/landRecordsPage.ts'
import { permitSheet } from '../../../../lib/words/sheets/permitSheet.ts'
import { askedRevision } from '../../server/askedRevision.ts'
import { download, fileName } from '../../server/download.ts'
import { openNotebook } from '../../server/opened.ts'
import { paperDate, revisionSummary } from '../../server/summaryOf.ts'

const sheets = { permit: permitSheet, buyer: buyerSheet, records: landRecordsPage } as const

/** One page about a revision: `?for=permit`, `buyer` or `records`, `&revision=2`. */
export async function GET(
  request: Request,
  { params }: { params: Promise<{ notebookId: string }> },
): Promise<Response> {
  const opened = await openNotebook((await params).notebookId)
  const frozen = askedRevision(opened, request) ?? notFound()
  const asked = new URL(request.url).searchParams.get('for') ?? ''
  const sheet = Object.hasOwn(sheets, asked) ? sheets[asked as keyof typeof sheets] : notFound()
  const summary = revisionSummary(frozen, opened.revisions)
  const pdf = await sheetPdf({
    title: notebookTitle(summary.notebook),
    units: summary.notebook.units,
    content: sheet(summary, takeOff(summary.notebook)),
    standing: summary.standing,
    madeAt: paperDate(frozen),
    fonts: printFonts(),
  })
  return download(
    pdf,
    fileName(opened.notebook.title, `-revision-${frozen.revision.number}-${asked}.pdf`),
    'application/pdf',
  )
}
