import { notFound } from 'next/navigation'
import { printFonts } from '../../../../lib/files/printFonts.ts'
import { inkSigningPdf } from '../../../../lib/pdf/inkSigningPdf.ts'
import { askedRevision } from '../../server/askedRevision.ts'
import { download, fileName } from '../../server/download.ts'
import { openNotebook } from '../../server/opened.ts'
import { revisionSummary } from '../../server/summaryOf.ts'

/** A page for signing one revision in ink, with its hash on it. */
export async function GET(
  request: Request,
  { params }: { params: Promise<{ notebookId: string }> },
): Promise<Response> {
  const opened = await openNotebook((await params).notebookId)
  const frozen = askedRevision(opened, request) ?? notFound()
  const { notebook, standing } = revisionSummary(frozen, opened.revisions)
  if (standing.kind === 'draft') notFound()
  const pdf = await inkSigningPdf({
    notebook,
    standing,
    madeAt: frozen.revision.frozenAt,
    fonts: printFonts(),
  })
  return download(
    pdf,
    fileName(opened.notebook.title, `-revision-${frozen.revision.number}-ink.pdf`),
    'application/pdf',
  )
}
