import type { Household } from '../core/people/household.ts'
import { database, type Tables } from './database.ts'
import { putOnRecord } from './happenings.ts'
import { storedHousehold } from './storedHousehold.ts'

export const messageKinds = ['remark', 'objection', 'proposal', 'answer'] as const
export type MessageKind = (typeof messageKinds)[number]

/** What a household said about an item. */
export type Message = {
  readonly id: number
  readonly itemKey: string
  readonly household: Household
  readonly kind: MessageKind
  readonly text: string
  /** The message that this one answers. */
  readonly answers?: number
  readonly at: Date
}

/** The conversation beside one item, or all of a notebook's, oldest first. */
export async function messagesOf(notebookId: string, itemKey?: string): Promise<Message[]> {
  const rows = await database().read((tables) =>
    tables.message.findMany({
      where: { notebookId, ...(itemKey === undefined ? {} : { itemKey }) },
      orderBy: { id: 'asc' },
    }),
  )
  return rows.map(({ notebookId: _same, answers, ...row }) => ({
    ...row,
    household: storedHousehold(row.household),
    kind: messageKinds.find((kind) => kind === row.kind) ?? 'remark',
    ...(answers === null ? {} : { answers }),
  }))
}

type Said = {
  readonly notebookId: string
  readonly itemKey: string
  readonly household: Household
  readonly kind: MessageKind
  readonly text: string
  readonly answers?: number
  readonly at: Date
}

/** Says something beside an item; `no-such-message` where it answers what was never said there. */
export async function sayBesideItem(said: Said): Promise<'said' | 'no-such-message'> {
  return database().write((tables) => sayIn(tables, said))
}

/** The same inside a write transaction that holds more. */
export async function sayIn(tables: Tables, said: Said): Promise<'said' | 'no-such-message'> {
  const { notebookId, itemKey, household, kind, text, answers, at } = said
  if (answers !== undefined) {
    const answered = await tables.message.count({ where: { id: answers, notebookId, itemKey } })
    if (answered === 0) return 'no-such-message'
  }
  const { id } = await tables.message.create({
    data: { notebookId, itemKey, household, kind, text, answers: answers ?? null, at },
  })
  const detail = { message: id, kind, text, ...(answers === undefined ? {} : { answers }) }
  await putOnRecord(tables, { notebookId, household, at, kind: 'message', itemKey, detail })
  return 'said'
}
