import type { Household } from '../core/people/household.ts'
import { database, type Tables } from './database.ts'
import { type Happening, happenings } from './happenings.ts'
import { storedHousehold } from './storedHousehold.ts'

/** What one edit did to one item, or what else happened, as it is on record. */
export type Change = {
  readonly id: number
  /** The notebook's edit number after the edit; all changes of one edit share it. */
  readonly edit: number
  readonly kind: 'edit' | Happening
  readonly at: Date
  readonly household: Household
  readonly itemKey: string
  readonly previousKey?: string
  /** As `JSON.parse` reads it; null where there was no such item. */
  readonly before: unknown
  /** As `JSON.parse` reads it; null where there is no such item any more. */
  readonly after: unknown
  /** What is to be known about anything but an edit. */
  readonly detail?: Readonly<Record<string, unknown>>
}

/**
 * The edits of a notebook, with `happenings` all that happened, newest first; at most `limit` of them.
 *
 * With `itemKey`, the history of the item that bears this key now: going back, once an edit gave it its key, only
 * changes under its former key belong to it, for the key itself was another item's, or no one's, before.
 */
export async function changesOf(
  notebookId: string,
  which: { readonly itemKey?: string; readonly limit?: number; readonly happenings?: boolean } = {},
): Promise<Change[]> {
  const { itemKey, limit } = which
  const kinds = which.happenings === true ? {} : { kind: 'edit' }
  if (itemKey === undefined) {
    return load(notebookId, kinds, limit === undefined ? {} : { take: limit })
  }
  const history = historyOf(itemKey, await load(notebookId, kinds, {}))
  return limit === undefined ? history : history.slice(0, limit)
}

/**
 * The newest change of each item, in no order. Only these rows are read in full: a page needs no more, and a history of
 * years is long.
 */
export async function latestChanges(notebookId: string): Promise<Change[]> {
  return database().read(async (tables) => {
    const newest = await tables.change.groupBy({
      by: ['itemKey'],
      where: { notebookId, kind: 'edit' },
      _max: { id: true },
    })
    const ids = newest.flatMap(({ _max }) => (_max.id === null ? [] : [_max.id]))
    const rows = await tables.change.findMany({ where: { id: { in: ids } } })
    return rows.map(changeFrom)
  })
}

/** What the other household did after an entry of the log, newest first; at most `limit` of it. */
export async function changesOfOther(since: {
  readonly notebookId: string
  readonly household: Household
  readonly after: number
  readonly limit: number
}): Promise<Change[]> {
  const { notebookId, household, after, limit } = since
  const rows = await database().read((tables) =>
    tables.change.findMany({
      where: { notebookId, household: { not: household }, id: { gt: after } },
      orderBy: { id: 'desc' },
      take: limit,
    }),
  )
  return rows.map(changeFrom)
}

/** The keys of every item that was ever changed, whether it still exists or not. */
export async function itemKeysOnRecord(notebookId: string): Promise<string[]> {
  const keys = await database().read((tables) =>
    tables.change.groupBy({ by: ['itemKey'], where: { notebookId, kind: 'edit' } }),
  )
  return keys.map(({ itemKey }) => itemKey)
}

async function load(
  notebookId: string,
  kinds: { readonly kind?: string },
  page: { readonly take?: number },
): Promise<Change[]> {
  const rows = await database().read((tables) =>
    tables.change.findMany({ where: { notebookId, ...kinds }, orderBy: { id: 'desc' }, ...page }),
  )
  return rows.map(changeFrom)
}

type Row = Awaited<ReturnType<Tables['change']['findMany']>>[number]

function changeFrom(row: Row): Change {
  return {
    id: row.id,
    edit: row.edit,
    kind: kindOf(row.kind),
    at: row.at,
    household: storedHousehold(row.household),
    itemKey: row.itemKey,
    ...(row.previousKey === null ? {} : { previousKey: row.previousKey }),
    before: parsed(row.before),
    after: parsed(row.after),
    ...(row.detail === null ? {} : { detail: JSON.parse(row.detail) as Readonly<Record<string, unknown>> }),
  }
}

function kindOf(stored: string): Change['kind'] {
  const kind = (['edit', ...happenings] as const).find((one) => one === stored)
  if (kind === undefined) throw new Error(`The database holds an entry of kind ${stored}.`)
  return kind
}

/** Follows one item back through `newestFirst`. Exchanging two keys in one edit must not lead from one to the other. */
function historyOf(itemKey: string, newestFirst: readonly Change[]): Change[] {
  const history: Change[] = []
  let key = itemKey
  let keyBefore = itemKey
  let edit: number | undefined
  for (const change of newestFirst) {
    if (change.edit !== edit) {
      edit = change.edit
      key = keyBefore
    }
    if (change.itemKey === key) {
      history.push(change)
      keyBefore = change.previousKey ?? key
    }
  }
  return history
}

function parsed(text: string | null): unknown {
  return text === null ? null : JSON.parse(text)
}
