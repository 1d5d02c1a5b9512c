import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { endProposal, proposalsOf } from '../../../lib/store/proposals.ts'
import { aProposal } from '../../actions/givenForms.ts'
import { shortNotebook } from '../shortNotebook.ts'
import { pressedTwice } from './pressing.ts'
import type { RefusalRow, Table } from './refusalRow.ts'
import { notebookOf, rewritten, withKeys } from './storeBeside.ts'

export const accept = pressedTwice(/^Accept proposal/)
export const [bank] = shortNotebook.sections
export const percent = (a: string, b: string) => ({ together: { principle: 'percent', a, b } })

/** The section is another one. */
export const bankWith = (change: object) => withKeys({ sections: [{ ...bank, ...change }] })

/** What b proposes for the section, and how it stands in the store. */
async function proposed(table: Table, change: object, by: 'a' | 'b' = 'b', id = 's1'): Promise<number> {
  await rewritten(table, asBefore)
  return aProposal(notebookOf(table), by, id, change)
}

export const asBefore = (document: NotebookDocument) =>
  ({ ...document, ...shortNotebook }) as NotebookDocument

/** No proposal stands any more. */
export async function withdrawn(table: Table): Promise<void> {
  const notebookId = notebookOf(table)
  for (const { id, household, reply } of await proposalsOf(notebookId))
    if (reply === undefined)
      await endProposal({ notebookId, household, id, kind: 'withdrawn', text: '', at: new Date() })
}

/** A proposal of b for the section stands, and after the row none does. */
export function standing(
  change: object,
  row: Omit<RefusalRow, 'at' | 'after'> & { readonly since?: object },
): RefusalRow {
  const { since, ...rest } = row
  return {
    ...rest,
    at: '/proposals',
    given: async (table) => {
      await proposed(table, change)
      if (since !== undefined) await rewritten(table, bankWith(since))
      await row.given?.(table)
    },
    after: withdrawn,
  }
}
