import { type PDFFont, PDFOperator, PDFOperatorNames, type PDFPage } from 'pdf-lib'
import type { ContentSequence } from './contentSequences.ts'
import type { Weight } from './faces.ts'
import type { Mark, TextMark } from './mark.ts'
import { markBox } from './markBox.ts'
import { paintMarks } from './paintMarks.ts'
import type { TaggedContent } from './structureTree.ts'

/**
 * Paints the content of a page, each run of it between the operators that say what it belongs to (ISO 32000-1, 14.6 and
 * 14.8.2.2). Gives the elements in the order of their numbers on the page. The boxes of figures are those on paper that is
 * printed `reduction` times smaller than it is painted here.
 */
export function paintSequences(
  page: PDFPage,
  sequences: readonly ContentSequence[],
  fonts: Readonly<Record<Weight, PDFFont>>,
  reduction: number,
): TaggedContent[] {
  const contents: TaggedContent[] = []
  const widthOf = ({ text, size, weight }: TextMark) => fonts[weight].widthOfTextAtSize(text, size)
  const boxOf = (marks: readonly Mark[]) => {
    const [left, top, right, bottom] = markBox(marks, widthOf)
    const height = page.getHeight()
    return [left, height - bottom, right, height - top].map((one) => one / reduction)
  }
  const paintBetween = (begin: PDFOperator, marks: readonly Mark[]) => {
    page.pushOperators(begin)
    paintMarks(page, marks, fonts)
    page.pushOperators(PDFOperator.of(PDFOperatorNames.EndMarkedContent))
  }
  for (const { tag, marks } of sequences) {
    if (tag === undefined) paintBetween(begin('Artifact', '/Type /Layout'), marks)
    else if (tag === 'pagination') paintBetween(begin('Artifact', '/Type /Pagination'), marks)
    else {
      paintBetween(begin(tag.role, `/MCID ${contents.length}`), marks)
      contents.push(tag.role === 'Figure' ? { element: tag, box: boxOf(marks) } : { element: tag })
    }
  }
  return contents
}

function begin(role: string, property: string): PDFOperator {
  return PDFOperator.of(PDFOperatorNames.BeginMarkedContentSequence, [`/${role}`, `<<${property}>>`])
}
