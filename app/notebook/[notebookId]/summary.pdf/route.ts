import { agreementText } from '../../../../lib/core/agreement/canonicalText.ts'
import { printFonts } from '../../../../lib/files/printFonts.ts'
import { summaryPaper } from '../../../../lib/pdf/summaryPaper.ts'
import { lockedCopyRefusals } from '../../../../lib/words/sealKeyText.ts'
import { askedRevision } from '../../server/askedRevision.ts'
import { download, fileName } from '../../server/download.ts'
import { lockedCopy } from '../../server/lockedCopy.ts'
import { type Opened, openNotebook } from '../../server/opened.ts'
import type { FrozenRevision } from '../../server/standingRevision.ts'
import { draftSummary, paperDate, revisionSummary } from '../../server/summaryOf.ts'
import { unlessGone } from '../../server/workStream.ts'

/**
 * The summary: of the notebook as it stands, marked as a draft; of a revision that not all have signed, as it is; of one
 * that all have signed, the locked copy, always the same bytes.
 */
export async function GET(
  request: Request,
  { params }: { params: Promise<{ notebookId: string }> },
): Promise<Response> {
  const opened = await openNotebook((await params).notebookId)
  const frozen = askedRevision(opened, request)
  return unlessGone(request, () => paperFile(opened, frozen, request.signal))
}

async function paperFile(
  opened: Opened,
  frozen: FrozenRevision | undefined,
  stop: AbortSignal,
): Promise<Response> {
  if (frozen === undefined) {
    const text = agreementText(opened.document)
    const pdf = await summaryPaper(draftSummary(opened), text, printFonts(), undefined, stop)
    return pdfFile(pdf, opened, '-draft.pdf')
  }
  const number = frozen.revision.number
  if (frozen.stillToSign.length === 0) return lockedFile(opened, frozen)
  const summary = revisionSummary(frozen, opened.revisions)
  const { canonicalText } = frozen.revision
  const pdf = await summaryPaper(summary, canonicalText, printFonts(), paperDate(frozen), stop)
  return pdfFile(pdf, opened, `-revision-${number}.pdf`)
}

async function lockedFile(opened: Opened, frozen: FrozenRevision): Promise<Response> {
  const { notebookId, household, revisions } = opened
  const copy = await lockedCopy({ notebookId, household, frozen, all: revisions })
  if (copy.kind === 'locked')
    return pdfFile(copy.paper.bytes, opened, `-revision-${frozen.revision.number}-locked.pdf`)
  return new Response(lockedCopyRefusals.notYet(copy.fault), {
    status: 503,
    headers: { 'Content-Type': 'text/plain; charset=utf-8', 'Cache-Control': 'private, no-store' },
  })
}

function pdfFile(pdf: Uint8Array, opened: Opened, ending: string): Response {
  return download(pdf, fileName(opened.notebook.title, ending), 'application/pdf')
}
