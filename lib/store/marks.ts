import type { Household } from '../core/people/household.ts'
import { database, type Tables } from './database.ts'
import { putOnRecord } from './happenings.ts'
import { documentIn } from './notebooks.ts'
import { storedHousehold } from './storedHousehold.ts'

/** "We agree to this item as it stands": the fingerprint is that of the item agreed to. */
export type Mark = {
  readonly itemKey: string
  readonly household: Household
  readonly fingerprint: string
  readonly at: Date
}

export async function marksOf(notebookId: string): Promise<Mark[]> {
  return database().read((tables) => marksIn(tables, notebookId))
}

/** The marks as they stand inside a write transaction, or committed. */
export async function marksIn(tables: Tables, notebookId: string): Promise<Mark[]> {
  const rows = await tables.mark.findMany({
    where: { notebookId },
    select: { itemKey: true, household: true, fingerprint: true, at: true },
    orderBy: [{ itemKey: 'asc' }, { household: 'asc' }],
  })
  return rows.map((row) => ({ ...row, household: storedHousehold(row.household) }))
}

/**
 * Marks an item as agreed, if it is still what the household saw (`fingerprint`): looked at inside the transaction, so
 * that no edit slips in between. A mark already there for the same content keeps its date.
 * Throws when there is no such notebook.
 */
export async function setMark(mark: {
  readonly id: string
  readonly household: Household
  readonly itemKey: string
  readonly fingerprint: string
  readonly at: Date
  readonly currentFingerprint: (document: string, itemKey: string) => string | undefined
}): Promise<'set' | 'changed-since' | 'no-such-item'> {
  const { id: notebookId, household, itemKey, fingerprint, at } = mark
  return database().write(async (tables) => {
    const current = mark.currentFingerprint(await documentIn(tables, notebookId), itemKey)
    if (current === undefined) {
      return 'no-such-item'
    }
    if (current !== fingerprint) {
      return 'changed-since'
    }
    await markIn(tables, { notebookId, household, itemKey, fingerprint, at })
    return 'set'
  })
}

/**
 * Sets a mark inside a write transaction, on what the caller knows to stand there, and puts it on record. One that is there
 * already for the same content keeps its date.
 *
 * @param mark.detail what is to be known about it besides the fingerprint
 */
export async function markIn(
  tables: Tables,
  mark: Mark & { readonly notebookId: string; readonly detail?: Readonly<Record<string, unknown>> },
): Promise<void> {
  const { notebookId, household, itemKey, fingerprint, at } = mark
  const key = { notebookId, itemKey, household }
  const standing = await tables.mark.findUnique({ where: { notebookId_itemKey_household: key } })
  if (standing?.fingerprint === fingerprint) return
  await tables.mark.upsert({
    where: { notebookId_itemKey_household: key },
    create: { ...key, fingerprint, at },
    update: { fingerprint, at },
  })
  const detail = { fingerprint, ...mark.detail }
  await putOnRecord(tables, { notebookId, household, at, kind: 'mark', itemKey, detail })
}

/** Takes a household's own mark off an item; says whether there was one. */
export async function takeMark(mark: {
  readonly id: string
  readonly household: Household
  readonly itemKey: string
  readonly at: Date
}): Promise<boolean> {
  const { id: notebookId, household, itemKey, at } = mark
  return database().write(async (tables) => {
    const taken = await tables.mark.deleteMany({ where: { notebookId, household, itemKey } })
    if (taken.count === 0) return false
    await putOnRecord(tables, { notebookId, household, at, kind: 'unmark', itemKey, detail: {} })
    return true
  })
}
