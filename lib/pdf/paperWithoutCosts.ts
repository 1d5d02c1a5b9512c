import { lineDrawing } from '../drawing/lineDrawing.ts'
import { notebookTitle } from '../words/labels.ts'
import { contentWithoutCosts, type WithoutCosts } from '../words/summary/contentWithoutCosts.ts'
import { drawingWords } from '../words/summary/drawingWords.ts'
import { notebookWithoutCosts } from '../words/summary/withoutCosts.ts'
import { drawingWidth } from './pageSize.ts'
import type { PrintFonts } from './pdfInput.ts'
import { summaryPdf } from './summaryPdf.ts'

/**
 * The summary without costs as a PDF. Nothing is attached: it prints the hash of the agreement, which the households
 * have, for the agreement itself says what everything costs.
 */
export function paperWithoutCosts(
  summary: WithoutCosts,
  fonts: PrintFonts,
  madeAt?: Date,
): Promise<Uint8Array> {
  const notebook = notebookWithoutCosts(summary.notebook)
  return summaryPdf({
    title: notebookTitle(notebook),
    language: 'en',
    units: notebook.units,
    content: contentWithoutCosts(summary),
    drawing: lineDrawing(notebook, {
      widthUnits: drawingWidth(notebook.units),
      words: drawingWords(notebook),
      details: true,
    }),
    standing: summary.standing,
    ...(madeAt ? { madeAt } : {}),
    fonts,
  })
}
