import type { Household } from '../../../lib/core/people/household.ts'
import { addContribution, contributionPath, entryCount } from '../../../lib/forms/book.ts'
import { entryOfDraft, pathInForm } from '../../../lib/forms/entryDraft.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { withTransferEntered } from '../../../lib/forms/transfers.ts'
import { shareNames } from '../../../lib/words/shareText.ts'
import type { SaveAnswer } from '../../ui/draft/saveAnswer.ts'
import { booksPlan, signedBefore } from './booksPlan.ts'
import { capFaults } from './capGuard.ts'
import { capsMarkedIn } from './capsNow.ts'
import { entryRecord } from './entryRecord.ts'
import { hoursQuestions } from './hoursEntry.ts'
import { enteredForOther, missingMeans, missingReceipt, nothingGiven, objectionsTo } from './newEntry.ts'
import { editDocument } from './savePart.ts'
import { today } from './today.ts'

/**
 * Enters what a draft says at the end of the book, with all that is asked of a new entry, in one transaction.
 *
 * @param already what is answered instead, where the book as it stands (`document`) makes it needless or wrong; `next` is the
 *   book with the entry
 */
export async function enterEntry(
  notebookId: string,
  household: Household,
  draft: Record<string, unknown>,
  already: (document: NotebookDocument, next: NotebookDocument) => SaveAnswer | undefined,
): Promise<SaveAnswer> {
  const { entry, earlierIsMeant } = entryOfDraft(draft)
  const missing = await missingReceipt(notebookId, entry.file)
  const { signed, startedOn } = await signedBefore(notebookId)
  const capsMarked = await capsMarkedIn(notebookId)
  const questionsOfHours = entry.kind === 'hours' ? await hoursQuestions(notebookId, entry) : undefined
  const answer = await editDocument(
    notebookId,
    household,
    (document) => {
      const ofHours = questionsOfHours?.(document)
      const added = addContribution(document, entry, household, ofHours?.own)
      const next = withTransferEntered(added, household, today())
      const instead = already(document, next)
      if (instead !== undefined) return instead
      const { isPlanned, notebook } = booksPlan(document, signed)
      const known = { today: today(), startedOn, isMeant: earlierIsMeant, isPlanned }
      const wanting = [
        ...missing,
        ...missingMeans(entry),
        ...nothingGiven(entry),
        ...enteredForOther(entry, household, shareNames(notebook)),
        ...objectionsTo(next, known),
        ...capFaults(next, notebook, signed !== undefined, capsMarked),
        ...(ofHours?.faults ?? []),
      ]
      const recorded = entryRecord(next, 'entered', { index: entryCount(document), by: household })
      return { next, prefix: contributionPath(document), wanting, ...recorded }
    },
    'also while closed',
  )
  if (!('faults' in answer)) return answer
  return { faults: answer.faults.map((fault) => ({ ...fault, path: pathInForm(fault.path) })) }
}
