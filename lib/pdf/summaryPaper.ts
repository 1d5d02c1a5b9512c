import type { Signature } from '../core/agreement/revision.ts'
import { lineDrawing } from '../drawing/lineDrawing.ts'
import { notebookTitle } from '../words/labels.ts'
import { drawingWords } from '../words/summary/drawingWords.ts'
import { summaryContent } from '../words/summary/summaryContent.ts'
import type { SummaryInput } from '../words/summary/summaryInput.ts'
import { drawingWidth } from './pageSize.ts'
import type { PrintFonts } from './pdfInput.ts'
import { summaryPdf } from './summaryPdf.ts'

/**
 * The summary of a notebook as a PDF, for the app and for the command line alike, with the canonical bytes of the
 * agreement and the signatures inside. `agreementText` has the SHA-256 that `summary.standing` names.
 */
export function summaryPaper(
  summary: SummaryInput,
  agreementText: string,
  fonts: PrintFonts,
  madeAt?: Date,
): Promise<Uint8Array> {
  const { notebook, standing, signatures } = summary
  return summaryPdf({
    title: notebookTitle(notebook),
    language: 'en',
    units: notebook.units,
    content: summaryContent(summary),
    drawing: lineDrawing(notebook, {
      widthUnits: drawingWidth(notebook.units),
      words: drawingWords(notebook),
      details: true,
    }),
    standing,
    attachments: { agreementText, signatures: signatures.map(withoutIds) },
    ...(madeAt ? { madeAt } : {}),
    fonts,
  })
}

/** What belongs into the file of signatures: none of the install's own ids. */
function withoutIds(one: Signature): Signature {
  const { household, partyIndex, partyName, capacity, typedName, intent, drawing, sha256, signedAt } = one
  return {
    household,
    partyIndex,
    partyName,
    capacity,
    typedName,
    intent,
    ...(drawing ? { drawing } : {}),
    sha256,
    signedAt,
  }
}
