import { isNumber, plainNumber } from '../../../lib/core/amounts/typedNumber.ts'
import { exactHours } from '../../../lib/core/hours/ownHours.ts'
import { standingOfEntry } from '../../../lib/core/hours/workable.ts'
import { type NotebookDocument, readDocument } from '../../../lib/forms/readNotebook.ts'
import { hoursRefusals } from '../../../lib/words/hoursText.ts'
import type { Fault } from '../../ui/draft/saveAnswer.ts'
import { agreedCeilings } from './agreedCeilings.ts'
import { openNotebook } from './opened.ts'
import { typedText } from './typedText.ts'

/** What is asked about a new hours entry, or how many of its hours are the worker's own. */
type HoursAnswer =
  | { readonly faults: Fault[]; readonly own?: undefined }
  | { readonly faults?: undefined; readonly own: string }

/**
 * Holds a new hours entry against the tasks of its item: hours beyond a ceiling need a tick, and are then stored as the
 * worker's own. The ceilings are those that are agreed when the form is sent; what was counted before is taken from the
 * document as it stands when the entry is made. Figures and days that are none are the file's own faults.
 */
export async function hoursQuestions(
  notebookId: string,
  draft: Readonly<Record<string, unknown>>,
): Promise<(document: NotebookDocument) => HoursAnswer> {
  const ceilings = agreedCeilings(await openNotebook(notebookId))
  return (document) => {
    const read = readDocument(document)
    const { household } = draft
    const hours = typedText(draft.hours)
    if (!read.ok || (household !== 'a' && household !== 'b') || !isNumber(hours, 6)) return { own: '' }
    const asked = exactHours(hours)
    const entry = {
      household,
      for: typedText(draft.for),
      task: typedText(draft.task),
      rate: typedText(draft.rate),
    } as const
    const standing = standingOfEntry({ ...ceilings, draft: read.value.notebook }, entry, asked)
    if (standing.kind === 'no such task')
      return { faults: [{ path: 'task', message: hoursRefusals.noSuchTask }] }
    if (standing.kind === 'gift with a rate')
      return { faults: [{ path: 'rate', message: hoursRefusals.giftWithRate }] }
    const { own, task } = standing
    if (own === 0n) return { own: '' }
    if (draft.ownIsOurs === true) return { own: plainNumber(own, 6) }
    const message = hoursRefusals.beyondCeiling(
      entry.task,
      asked,
      own,
      task?.ceiling ?? 0n,
      task?.counted ?? 0n,
    )
    return { faults: [{ path: 'ownIsOurs', message }] }
  }
}
