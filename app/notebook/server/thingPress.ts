import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import type { Thing } from '../../../lib/core/agreement/notebook.ts'
import type { Household } from '../../../lib/core/people/household.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { thingAt, thingWithoutMarks } from '../../../lib/forms/things.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { booksRefusals } from '../../../lib/words/booksText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { editBooks, refusalOf } from './editBooks.ts'
import { pressFields } from './pressFields.ts'

const pressSchema = z.object({
  index: z
    .string()
    .regex(/^(0|[1-9][0-9]{0,5})$/)
    .transform(Number),
  fingerprint: z.string().regex(/^[0-9a-f]{64}$/),
})

/**
 * One press on a thing, by who asks, on the one that its form was made for.
 *
 * @param may why it can't be done as the thing stands; undefined where it can
 */
export async function pressThing(
  notebookId: string,
  form: FormData,
  books: string,
  may: (thing: Thing, household: Household) => string | undefined,
  change: (document: NotebookDocument, index: number, household: Household) => NotebookDocument,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = pressSchema.safeParse(pressFields(form))
  if (!read.success) return { refused: booksRefusals.unreadable }
  const { index, fingerprint } = read.data
  const answer = await editBooks(notebookId, household, (document, { notebook }) => {
    const thing = notebook.books.things[index]
    if (thing === undefined || !isSameThing(document, index, fingerprint))
      return { refused: booksRefusals.changed }
    const refused = may(thing, household)
    if (refused !== undefined) return { refused }
    return {
      next: change(document, index, household),
      detail: { books, what: thing.what },
      about: { thing: index },
    }
  })
  return refusalOf(answer) ?? redirect(`/notebook/${notebookId}/books#things`)
}

/** Whether the thing at a place is still what a household was shown, whoever marked it since. */
export function isSameThing(document: NotebookDocument, index: number, fingerprint: string): boolean {
  const thing = thingAt(document, index)
  return thing !== undefined && fingerprintOf(thingWithoutMarks(thing)) === fingerprint
}
