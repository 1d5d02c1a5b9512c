import type { Household } from '../../../lib/core/people/household.ts'
import { statementOf } from '../../../lib/core/shares/statement.ts'
import { type NotebookDocument, readDocument } from '../../../lib/forms/readNotebook.ts'
import { booksRefusals } from '../../../lib/words/booksText.ts'
import { faultText } from '../../../lib/words/faultText.ts'
import type { SaveAnswer } from '../../ui/draft/saveAnswer.ts'
import { type BooksPlan, booksPlan, signedBefore } from './booksPlan.ts'
import { type InBooks, recordAbout } from './recordAbout.ts'
import { editDocument } from './savePart.ts'

type BooksEdit =
  | {
      readonly next: NotebookDocument
      /** What the record says of it. */
      readonly detail: Readonly<Record<string, string>>
      /** A thing on the list, or an entry, by its place: the record says its item and its amount. */
      readonly about?: InBooks
      /** Path of what a form edits: faults inside it are given paths of that form. */
      readonly prefix?: string
    }
  | { readonly refused: string }
  /** It was sent before and stands there already. */
  | { readonly arrived: true }

/**
 * One edit of the books, in one transaction and on record; a closed notebook takes it too. Refused where the shares could
 * be worked out before and could not any more: nobody marks a figure that leaves both without a balance.
 */
export async function editBooks(
  notebookId: string,
  household: Household,
  change: (document: NotebookDocument, plan: BooksPlan) => BooksEdit,
): Promise<SaveAnswer> {
  const { signed } = await signedBefore(notebookId)
  const refused = (message: string) => ({ faults: [{ path: '', message }] })
  return editDocument(
    notebookId,
    household,
    (document) => {
      const plan = booksPlan(document, signed)
      const edited = change(document, plan)
      if ('refused' in edited) return refused(edited.refused)
      if ('arrived' in edited) return { saved: true, base: '' }
      const { next, detail, about, prefix } = edited
      // A document that does not hold is refused where it is stored, with every fault.
      if (readDocument(next).ok && statementOf(plan.notebook).ok) {
        const after = statementOf(booksPlan(next, signed).notebook)
        if (!after.ok) return refused(booksRefusals.breaks(after.faults.map(faultText).join(' ')))
      }
      const record = { kind: 'books' as const, ...recordAbout(next, about, detail) }
      return { next, record, ...(prefix === undefined ? {} : { prefix }) }
    },
    'also while closed',
  )
}

/** The answer of a press: refused in one sentence, or nothing where it was done. */
export function refusalOf(answer: SaveAnswer): { readonly refused: string } | undefined {
  if ('faults' in answer) return { refused: answer.faults.map(({ message }) => message).join(' ') }
  return 'saved' in answer ? undefined : { refused: booksRefusals.changed }
}
