import { type Household, otherHousehold } from '../core/people/household.ts'
import { database, type Tables } from './database.ts'
import { putOnRecord } from './happenings.ts'
import { documentIn } from './notebooks.ts'
import {
  endIn,
  itemsOf,
  numberIn,
  type ProposalEnd,
  type ProposedItem,
  proposalEnds,
  rowOf,
} from './proposalRows.ts'
import { storedHousehold } from './storedHousehold.ts'

export type { ProposalEnd, ProposedItem } from './proposalRows.ts'

/** "We propose this for these items", and how it ended, if it did. */
export type Proposal = {
  readonly id: number
  /** 1, 2, 3 … within its notebook: what it is called. */
  readonly number: number
  readonly household: Household
  readonly items: readonly ProposedItem[]
  readonly text: string
  /** The id of the proposal that this one answers. */
  readonly answers?: number
  readonly at: Date
  readonly reply?: {
    readonly kind: ProposalEnd
    readonly household: Household
    readonly text: string
    readonly at: Date
  }
}

/** All proposals of a notebook with their replies, oldest first. */
export async function proposalsOf(notebookId: string): Promise<Proposal[]> {
  return database().read(async (tables) => {
    const rows = await tables.proposal.findMany({
      where: { notebookId },
      orderBy: { id: 'asc' },
      include: { reply: true },
    })
    const itemsOfRows: ProposedItem[][] = []
    for (const { items } of rows) itemsOfRows.push(await itemsOf(tables, notebookId, items))
    return rows.map(({ id, household, text, answers, at, reply }, index) => ({
      id,
      number: index + 1,
      household: storedHousehold(household),
      items: itemsOfRows[index] ?? [],
      text,
      ...(answers === null ? {} : { answers }),
      at,
      ...(reply === null
        ? {}
        : {
            reply: {
              kind: endOf(reply.kind),
              household: storedHousehold(reply.household),
              text: reply.text,
              at: reply.at,
            },
          }),
    }))
  })
}

/** How many standing proposals wait for this household's answer. */
export async function proposalsWaitingFor(notebookId: string, household: Household): Promise<number> {
  return database().read((tables) =>
    tables.proposal.count({ where: { notebookId, household: otherHousehold(household), reply: null } }),
  )
}

function endOf(stored: string): ProposalEnd {
  const kind = proposalEnds.find((one) => one === stored)
  if (kind === undefined) throw new Error(`The database holds a reply of kind ${stored}.`)
  return kind
}

/** What a proposal came to: its number, and the numbers of the household's own ones whose place it takes. */
export type Made = { readonly made: number; readonly id: number; readonly withdrew: readonly number[] }

/**
 * Makes a proposal in one transaction. `refusal` looks at the document as it stands, and keeps it from being made where it
 * answers anything. The proposal that it answers is of the other household and stands; it ends as 'answered'. The
 * household's own standing ones that share an item with it end as 'withdrawn'.
 */
export async function makeProposal<Refusal>(proposal: {
  readonly notebookId: string
  readonly household: Household
  readonly items: readonly ProposedItem[]
  readonly text: string
  readonly answers?: number
  readonly at: Date
  readonly refusal: (document: string) => Refusal | undefined
}): Promise<Made | { readonly refused: Refusal } | 'no-such-proposal' | 'ended'> {
  const { notebookId, household, items, text, answers, at } = proposal
  return database().write(async (tables) => {
    const answered = answers === undefined ? undefined : await rowOf(tables, notebookId, answers)
    if (answers !== undefined && (answered === undefined || answered.household === household))
      return 'no-such-proposal'
    if (answered?.ended) return 'ended'
    const refused = proposal.refusal(await documentIn(tables, notebookId))
    if (refused !== undefined) return { refused }
    const replaced = await ownOnItems(tables, notebookId, household, items)
    const { id } = await tables.proposal.create({
      data: { notebookId, household, items: JSON.stringify(items), text, answers: answers ?? null, at },
    })
    const number = await numberIn(tables, notebookId, id)
    const detail = {
      proposal: number,
      text,
      items: items.map((one) => one.id),
      ...(answered === undefined ? {} : { answers: answered.number }),
    }
    await putOnRecord(tables, { notebookId, household, at, kind: 'proposal', detail })
    const end = { notebookId, household, text: '', at, by: number }
    if (answered !== undefined)
      await endIn(tables, { ...end, id: answered.id, number: answered.number, kind: 'answered' })
    for (const one of replaced) await endIn(tables, { ...end, ...one, kind: 'withdrawn' })
    return { made: number, id, withdrew: replaced.map((one) => one.number) }
  })
}

/** Declines a proposal of the other household, or withdraws one's own; each ends once. */
export async function endProposal(end: {
  readonly notebookId: string
  readonly household: Household
  readonly id: number
  readonly kind: 'declined' | 'withdrawn'
  readonly text: string
  readonly at: Date
}): Promise<'done' | 'no-such-proposal' | 'ended'> {
  const { notebookId, household, id, kind, text, at } = end
  return database().write(async (tables) => {
    const row = await rowOf(tables, notebookId, id)
    if (row === undefined || (row.household === household) !== (kind === 'withdrawn'))
      return 'no-such-proposal'
    if (row.ended) return 'ended'
    await endIn(tables, { notebookId, household, id, number: row.number, kind, text, at })
    return 'done'
  })
}

/** The standing proposals of a household that share an item with these. */
export async function ownOnItems(
  tables: Tables,
  notebookId: string,
  household: Household,
  items: readonly { readonly id: string }[],
): Promise<{ readonly id: number; readonly number: number }[]> {
  const rows = await tables.proposal.findMany({
    where: { notebookId, household, reply: null },
    select: { id: true, items: true },
    orderBy: { id: 'asc' },
  })
  const touched = rows.filter((row) =>
    (JSON.parse(row.items) as ProposedItem[]).some((one) => items.some(({ id }) => id === one.id)),
  )
  return Promise.all(touched.map(async ({ id }) => ({ id, number: await numberIn(tables, notebookId, id) })))
}
