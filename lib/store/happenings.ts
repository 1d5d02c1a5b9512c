import { wholeNotebook } from '../core/agreement/agreedItems.ts'
import type { Household } from '../core/people/household.ts'
import type { Tables } from './database.ts'

/** What else than an edit goes on record. */
export const happenings = [
  'mark',
  'unmark',
  'freeze',
  'sign',
  'seal',
  'link',
  'reader',
  'file',
  'message',
  'held back',
  'first answer',
  'proposal',
  'reply',
  'books',
  'account',
] as const
export type Happening = (typeof happenings)[number]

/**
 * Puts on record that something happened, in the transaction in which it happens: either both are on disk or neither.
 *
 * @param what.detail anything JSON can carry; never a token, a drawing or the text of a file
 */
export async function putOnRecord(
  tables: Tables,
  what: {
    readonly notebookId: string
    readonly household: Household
    readonly at: Date
    readonly kind: Happening
    readonly itemKey?: string
    readonly detail: Readonly<Record<string, unknown>>
  },
): Promise<void> {
  const { notebookId, household, at, kind } = what
  const { edit } = await tables.notebook.findUniqueOrThrow({
    where: { id: notebookId },
    select: { edit: true },
  })
  await tables.change.create({
    data: {
      notebookId,
      household,
      at,
      kind,
      edit,
      itemKey: what.itemKey ?? wholeNotebook,
      detail: JSON.stringify(what.detail),
    },
  })
}
