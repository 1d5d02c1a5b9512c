import type { Signature } from '../core/agreement/revision.ts'
import { lineDrawing } from '../drawing/lineDrawing.ts'
import { notebookTitle } from '../words/labels.ts'
import { drawingWords } from '../words/summary/drawingWords.ts'
import { summaryContent } from '../words/summary/summaryContent.ts'
import type { SummaryInput } from '../words/summary/summaryInput.ts'
import { facesOf } from './faces.ts'
import { layOut } from './layOut.ts'
import type { Mark } from './mark.ts'
import { drawingWidth, type PageSize, pageSize } from './pageSize.ts'
import type { PrintFonts } from './pdfInput.ts'
import { summaryPdf } from './summaryPdf.ts'

/**
 * The summary of a notebook as a PDF, for the app and for the command line alike, with the canonical bytes of the
 * agreement and the signatures inside. `agreementText` has the SHA-256 that `summary.standing` names. Where
 * it is stopped, it ends between two pages.
 *
 * @throws the reason of the stop
 */
export function summaryPaper(
  summary: SummaryInput,
  agreementText: string,
  fonts: PrintFonts,
  madeAt?: Date,
  stop?: AbortSignal,
): Promise<Uint8Array> {
  return summaryPdf({
    ...contentOf(summary),
    language: 'en',
    attachments: { agreementText, signatures: summary.signatures.map(withoutIds) },
    ...(madeAt ? { madeAt } : {}),
    ...(stop ? { stop } : {}),
    fonts,
  })
}

/** The same summary as the marks on its pages, for a screen: what stands where in the PDF. */
export function summaryPages(
  summary: SummaryInput,
  fonts: PrintFonts,
): { readonly page: PageSize; readonly pages: readonly (readonly Mark[])[] } {
  const { content, drawing, title, standing, units } = contentOf(summary)
  const page = pageSize(units)
  return { page, pages: layOut(content, drawing, { title, standing }, facesOf(fonts), page) }
}

function contentOf(summary: SummaryInput) {
  const { notebook, standing } = summary
  return {
    title: notebookTitle(notebook),
    units: notebook.units,
    content: summaryContent(summary),
    drawing: lineDrawing(notebook, {
      widthUnits: drawingWidth(notebook.units),
      words: drawingWords(notebook),
      details: true,
    }),
    standing,
  }
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
