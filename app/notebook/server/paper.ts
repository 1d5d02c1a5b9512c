import { lineDrawing } from '../../../lib/drawing/lineDrawing.ts'
import { printFonts } from '../../../lib/files/printFonts.ts'
import { drawingWidth } from '../../../lib/pdf/pageSize.ts'
import { summaryPdf } from '../../../lib/pdf/summaryPdf.ts'
import type { Signature } from '../../../lib/core/agreement/revision.ts'
import { drawingWords } from '../../../lib/words/summary/drawingWords.ts'
import { summaryContent } from '../../../lib/words/summary/summaryContent.ts'
import type { SummaryInput } from '../../../lib/words/summary/summaryInput.ts'
import { notebookTitle } from '../../../lib/words/labels.ts'

/** The summary as a PDF, with the canonical bytes of the agreement and the signatures inside. */
export function summaryPaper(summary: SummaryInput, agreementText: string, madeAt?: Date): Promise<Uint8Array> {
  const { notebook, standing, signatures } = summary
  const words = drawingWords(notebook)
  return summaryPdf({
    title: notebookTitle(notebook),
    language: 'en',
    units: notebook.units,
    content: summaryContent(summary),
    drawing: lineDrawing(notebook, { widthUnits: drawingWidth(notebook.units), words }),
    standing,
    attachments: { agreementText, signatures: signatures.map(onlySignature) },
    ...(madeAt ? { madeAt } : {}),
    fonts: printFonts(),
  })
}

/** What belongs into the file of signatures: none of the install's own ids. */
function onlySignature(one: Signature): Signature {
  const { household, partyIndex, partyName, capacity, typedName, intent, drawing, sha256, signedAt } = one
  return { household, partyIndex, partyName, capacity, typedName, intent, ...(drawing ? { drawing } : {}), sha256, signedAt }
}
