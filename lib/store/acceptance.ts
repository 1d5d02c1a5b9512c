import type { Household } from '../core/people/household.ts'
import { database } from './database.ts'
import { type Mark, markIn, marksIn } from './marks.ts'
import { editIn, type ItemChange } from './notebooks.ts'
import { endIn, type ProposedItem, rowOf } from './proposalRows.ts'
import { ownOnItems } from './proposals.ts'

/** The document with the proposal in it, and whose marks are then set on what its items say. */
export type Taken = {
  readonly document: string
  readonly changed: readonly ItemChange[]
  readonly marks: readonly {
    readonly itemKey: string
    readonly fingerprint: string
    readonly households: readonly Household[]
  }[]
}

/**
 * Accepts a proposal of the other household, in one transaction: `take` puts its items into the document as it stands or
 * refuses, and says whose marks stand on them then; it is given the marks as they stood before. What the accepting
 * household had proposed itself for the same items ends as withdrawn. A refusal changes nothing.
 */
export async function acceptProposal<Refusal>(accepted: {
  readonly notebookId: string
  readonly household: Household
  readonly id: number
  readonly at: Date
  readonly take: (
    document: string,
    items: readonly ProposedItem[],
    marks: readonly Mark[],
  ) => Taken | { readonly refused: Refusal }
}): Promise<
  { readonly accepted: number } | { readonly refused: Refusal } | 'no-such-proposal' | 'own' | 'ended'
> {
  const { notebookId, household, id, at, take } = accepted
  return database().write(async (tables) => {
    const row = await rowOf(tables, notebookId, id)
    if (row === undefined) return 'no-such-proposal'
    if (row.household === household) return 'own'
    if (row.ended) return 'ended'
    const marks = await marksIn(tables, notebookId)
    const edited = await editIn<Taken | { readonly refused: Refusal }>(tables, {
      id: notebookId,
      household,
      at,
      change: (document) => {
        const taken = take(document, row.items, marks)
        return 'refused' in taken ? { refused: taken } : { ...taken, kept: taken }
      },
    })
    if ('refused' in edited) return edited
    const { number } = row
    for (const { households, ...mark } of edited.marks)
      for (const one of households)
        await markIn(tables, { ...mark, notebookId, household: one, at, detail: { proposal: number } })
    const own = await ownOnItems(tables, notebookId, household, row.items)
    const end = { notebookId, household, text: '', at }
    await endIn(tables, { ...end, id, number, kind: 'accepted' })
    for (const one of own) await endIn(tables, { ...end, ...one, kind: 'withdrawn', by: number })
    return { accepted: number }
  })
}
