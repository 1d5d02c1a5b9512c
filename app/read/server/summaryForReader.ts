import { agreementText } from '../../../lib/core/agreement/canonicalText.ts'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { printFonts } from '../../../lib/files/printFonts.ts'
import { paperWithoutCosts } from '../../../lib/pdf/paperWithoutCosts.ts'
import { summaryPaper } from '../../../lib/pdf/summaryPaper.ts'
import type { Block } from '../../../lib/words/summary/block.ts'
import { contentWithoutCosts } from '../../../lib/words/summary/contentWithoutCosts.ts'
import { summaryContent } from '../../../lib/words/summary/summaryContent.ts'
import { notebookWithoutCosts } from '../../../lib/words/summary/withoutCosts.ts'
import { draftSummary, paperDate, revisionSummary } from '../../notebook/server/summaryOf.ts'
import type { ReaderOpening } from './opening.ts'

/** The summary that a link shows on screen: blocks, and the notebook that its drawing is made from. */
export type SummaryForReader = { readonly blocks: readonly Block[]; readonly notebook: Notebook }

/**
 * The newest revision that all have signed, as much of it as the link holds. Where nothing is signed, only a link to
 * everything shows the draft; undefined for every other.
 */
export function summaryForReader(opening: ReaderOpening): SummaryForReader | undefined {
  const { link, signed, revisions } = opening
  if (link.content === 'summary') {
    if (signed === undefined) return undefined
    const blocks = contentWithoutCosts(revisionSummary(signed, revisions))
    return { blocks, notebook: notebookWithoutCosts(signed.notebook) }
  }
  if (signed !== undefined) {
    return { blocks: summaryContent(revisionSummary(signed, revisions)), notebook: signed.notebook }
  }
  if (link.content !== 'everything') return undefined
  return { blocks: summaryContent(draftSummary(opening)), notebook: opening.notebook }
}

/** The same as a PDF, with the ending of its name; undefined where `summaryForReader` is. */
export async function paperForReader(
  opening: ReaderOpening,
): Promise<{ readonly pdf: Uint8Array; readonly ending: string } | undefined> {
  const { link, signed, revisions, document } = opening
  if (signed === undefined) {
    if (link.content !== 'everything') return undefined
    const pdf = await summaryPaper(draftSummary(opening), agreementText(document), printFonts())
    return { pdf, ending: '-draft.pdf' }
  }
  const [summary, madeAt] = [revisionSummary(signed, revisions), paperDate(signed)]
  const { number, canonicalText } = signed.revision
  if (link.content === 'summary') {
    const pdf = await paperWithoutCosts(summary, printFonts(), madeAt)
    return { pdf, ending: `-revision-${number}-without-costs.pdf` }
  }
  const pdf = await summaryPaper(summary, canonicalText, printFonts(), madeAt)
  return { pdf, ending: `-revision-${number}.pdf` }
}
