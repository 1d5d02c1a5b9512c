import { itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import { actualsOf } from '../../../lib/core/ledger/actual.ts'
import { lineFinder } from '../../../lib/core/ledger/findLine.ts'
import { waitingTransfers } from '../../../lib/core/ledger/transfers.ts'
import { movedLines, waitingMarks } from '../../../lib/core/ledger/waitingMarks.ts'
import { digitsOf } from '../../../lib/core/shares/statement.ts'
import { writerOf } from '../../../lib/forms/book.ts'
import { goneLinesWords, movedLinesWords, waitingMarksWords } from '../../../lib/words/booksText.ts'
import { beyondToleranceWords } from '../../../lib/words/toleranceText.ts'
import { waitingForWordWords } from '../../../lib/words/transferText.ts'
import type { OpenMatter } from '../../ui/OpenMatters.tsx'
import { cameToAnchor, itemAnchor } from './account/openForAccountPage.ts'
import { beyondAgreed } from './beyondAgreed.ts'
import type { Opened } from './opened.ts'
import { pageOfItem } from './pages.ts'

/** What in the books waits for the household: figures for its mark, and its own receipts whose line is gone. */
export function booksMatters(opened: Opened): OpenMatter[] {
  const { notebook, notebookId, household, revisions } = opened
  const plan = revisions.find(({ stillToSign }) => stillToSign.length === 0)?.notebook ?? notebook
  const digits = digitsOf(plan)
  const waiting = waitingMarks(plan, household, digits)
  const payments = waitingTransfers(notebook, digits).filter(({ to }) => to === household).length
  const href = `/notebook/${notebookId}/books`
  // Where either has marked what it comes to now, a mark is waited for, which is told by itself.
  const moved = movedLines(plan, digits).filter(({ markedBy }) => markedBy.length === 0)
  const [first] = moved
  const inDraft = lineFinder(notebook)
  const hasLines = plan.contributions.some(({ lines }) => lines.length > 0)
  const gone = hasLines
    ? actualsOf(plan, digits).gone.filter(
        ({ entry, was }) =>
          inDraft(was) === undefined && writerOf(plan.contributions[entry] ?? {}) === household,
      ).length
    : 0
  return [
    ...(payments === 0
      ? []
      : [{ text: waitingForWordWords(payments), href: `/notebook/${notebookId}/money#book` }]),
    ...beyondAgreed(opened).map((item) => ({
      text: beyondToleranceWords(item, plan.currency),
      href: `${pageOfItem(notebookId, itemKey(item.id), item.kind)}#${cameToAnchor}`,
    })),
    ...(first === undefined
      ? []
      : [
          {
            text: movedLinesWords(moved, plan.currency),
            href: `${href}#${itemAnchor(first.line.itemId)}`,
          },
        ]),
    ...(waiting === 0 ? [] : [{ text: waitingMarksWords(waiting), href }]),
    ...(gone === 0 ? [] : [{ text: goneLinesWords(gone), href: `${href}#gone` }]),
  ]
}
