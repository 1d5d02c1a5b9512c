import { itemKey } from '../core/agreement/agreedItems.ts'
import type { Household } from '../core/people/household.ts'
import type { Tables } from './database.ts'
import { fingerprintOf } from './fingerprint.ts'
import { putOnRecord } from './happenings.ts'
import { storedHousehold } from './storedHousehold.ts'

/**
 * An item as it would be, and what it was when that was proposed: its fingerprint, and the item itself where it is known.
 * `seen` is the fingerprint of all that a mark stood for on it, before and with the proposal, as its household had it before
 * it; missing where that is not known.
 */
export type ProposedItem = {
  readonly id: string
  readonly fingerprint: string
  readonly seen?: string
  readonly was?: Readonly<Record<string, unknown>>
  readonly item: Readonly<Record<string, unknown>>
}

export const proposalEnds = ['accepted', 'declined', 'answered', 'withdrawn'] as const
export type ProposalEnd = (typeof proposalEnds)[number]

/** What a writer has to know about a proposal. */
export type ProposalRow = {
  readonly id: number
  readonly number: number
  readonly household: Household
  readonly items: readonly ProposedItem[]
  readonly ended: boolean
}

/** A proposal of this notebook inside a write transaction; undefined where there is none with this id. */
export async function rowOf(
  tables: Tables,
  notebookId: string,
  id: number,
): Promise<ProposalRow | undefined> {
  const row = await tables.proposal.findFirst({ where: { id, notebookId }, include: { reply: true } })
  if (row === null) return undefined
  return {
    id,
    number: await numberIn(tables, notebookId, id),
    household: storedHousehold(row.household),
    items: await itemsOf(tables, notebookId, row.items),
    ended: row.reply !== null,
  }
}

/**
 * The items of a stored proposal. One that was made before proposals kept what the item was has it from the record of
 * edits, once it was changed.
 */
export async function itemsOf(tables: Tables, notebookId: string, stored: string): Promise<ProposedItem[]> {
  const items: ProposedItem[] = []
  for (const one of JSON.parse(stored) as ProposedItem[]) {
    const was = one.was ?? (await itemThen(tables, notebookId, one))
    items.push(was === undefined ? one : { ...one, was })
  }
  return items
}

async function itemThen(tables: Tables, notebookId: string, { id, fingerprint }: ProposedItem) {
  const changes = await tables.change.findMany({
    where: { notebookId, kind: 'edit', itemKey: itemKey(id) },
    select: { before: true },
  })
  return changes
    .map(({ before }) => (before === null ? undefined : (JSON.parse(before) as { item?: object }).item))
    .find((item) => item !== undefined && fingerprintOf(item) === fingerprint) as
    | Readonly<Record<string, unknown>>
    | undefined
}

/** What a proposal is called: 1, 2, 3 … within its notebook. */
export async function numberIn(tables: Tables, notebookId: string, id: number): Promise<number> {
  return tables.proposal.count({ where: { notebookId, id: { lte: id } } })
}

/**
 * Ends a proposal and puts that on record.
 *
 * @param end.by the number of the proposal that ended it, where one did
 */
export async function endIn(
  tables: Tables,
  end: {
    readonly notebookId: string
    readonly household: Household
    readonly id: number
    readonly number: number
    readonly kind: ProposalEnd
    readonly text: string
    readonly at: Date
    readonly by?: number
  },
): Promise<void> {
  const { notebookId, household, id, number, kind, text, at, by } = end
  await tables.proposalReply.create({ data: { proposalId: id, household, kind, text, at } })
  const detail = { reply: kind, proposal: number, text, ...(by === undefined ? {} : { by }) }
  await putOnRecord(tables, { notebookId, household, at, kind: 'reply', detail })
}
