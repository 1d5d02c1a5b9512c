'use server'

import { redirect } from 'next/navigation'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { agreedItems, wholeNotebook } from '../../../lib/core/agreement/agreedItems.ts'
import { askAgain } from '../../../lib/forms/askAgain.ts'
import { type NotebookDocument, readNotebook } from '../../../lib/forms/readNotebook.ts'
import { answerFirst } from '../../../lib/store/firstAnswers.ts'
import { faultText } from '../../../lib/words/faultText.ts'
import { askAgainWords, firstAnswerRefusals } from '../../../lib/words/firstAnswerText.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { pressRefusals } from '../../../lib/words/pressText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { closedByNumber } from './closed.ts'
import { readFirstAnswer } from './firstAnswerForm.ts'
import { itemChanges } from './itemChanges.ts'
import { toStore } from './toStore.ts'

/**
 * One of the five answers of the invited household. It binds nobody; a question goes into the conversation, a day on
 * which to ask again among the dates, both in one transaction with the answer.
 */
export async function giveFirstAnswer(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  if (household !== 'b') return { refused: firstAnswerRefusals.notInvited }
  const at = new Date()
  const read = readFirstAnswer(form, at.toISOString().slice(0, 10))
  if ('refused' in read) return { refused: read.refused }
  const closed = await closedByNumber(notebookId)
  if (closed !== undefined) return { refused: pressRefusals.closed(closed) }
  const { about, ...given } = read
  const written = await answerFirst<string>({
    notebookId,
    answer: { ...given, household, at },
    ...(about === undefined ? {} : { asksBeside: about }),
    change: (stored) => withAnswer(stored, given.until, about),
  })
  if (written !== 'written') return { refused: written.refused }
  redirect(`/notebook/${notebookId}/answer`)
}

/** The document as the answer leaves it; refused where the item that a question is about is gone. */
function withAnswer(stored: string, until: string | undefined, about: string | undefined) {
  const document = JSON.parse(stored) as NotebookDocument
  if (
    about !== undefined &&
    about !== wholeNotebook &&
    !agreedItems(document).some(({ key }) => key === about)
  )
    return { refused: { refused: firstAnswerRefusals.about } }
  const read = readNotebook(stored)
  const b = read.ok ? householdName(read.value.notebook, 'b') : 'b'
  const stores = toStore(askAgain(document, askAgainWords(b), until))
  if (!stores.ok) return { refused: { refused: stores.faults.map(faultText).join(' ') } }
  const { text, document: next } = stores.value
  // Where no date is touched the text stays as it is, however it was written.
  return text === stored
    ? { document: stored, changed: [], kept: 'written' as const }
    : { document: text, changed: itemChanges(document, next), kept: 'written' as const }
}
