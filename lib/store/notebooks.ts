import type { Household } from '../core/people/household.ts'
import { database, type Tables } from './database.ts'
import { newNotebookId } from './randomToken.ts'

export type StoredNotebook = {
  readonly id: string
  /** The notebook file's JSON text. */
  readonly document: string
  /** How many edits the document has had. */
  readonly edit: number
  readonly example: boolean
  readonly createdAt: Date
  readonly updatedAt: Date
}

/** What an edit did to one item: `undefined` or `null` where there was, or is, no such item. */
export type ItemChange = {
  readonly itemKey: string
  /** The item's key before the edit, where the edit gave it another. */
  readonly previousKey?: string
  readonly before: unknown
  readonly after: unknown
  /** Where the marks stand for the item as it is now too: its fingerprints before and after. Else it loses them. */
  readonly marksStay?: { readonly before: string; readonly after: string }
}

export type Edit<Kept> =
  | { readonly document: string; readonly changed: readonly ItemChange[]; readonly kept: Kept }
  | { readonly refused: Kept }

export async function createNotebook(start: {
  readonly document: string
  readonly example: boolean
  readonly at: Date
}): Promise<{ id: string }> {
  const id = newNotebookId()
  await database().write((tables) =>
    tables.notebook.create({
      data: {
        id,
        document: start.document,
        example: start.example,
        createdAt: start.at,
        updatedAt: start.at,
      },
    }),
  )
  return { id }
}

export async function findNotebook(id: string): Promise<StoredNotebook | undefined> {
  const found = await database().read((tables) => tables.notebook.findUnique({ where: { id } }))
  return found ?? undefined
}

/** The document as it stands inside a write transaction. Throws when there is no such notebook. */
export async function documentIn(tables: Tables, notebookId: string): Promise<string> {
  const { document } = await tables.notebook.findUniqueOrThrow({
    where: { id: notebookId },
    select: { document: true },
  })
  return document
}

/**
 * One edit in one transaction. `change` is given the document as it stands and answers with the new one, or refuses;
 * nothing else can be written in between. Each changed item loses the marks of both households, unless it says that they
 * stay, and one line per item goes on record. Where the document comes out the same, nothing is written.
 *
 * Throws when there is no such notebook, and when `change` names changed items but leaves the document as it was.
 */
export async function editNotebook<Kept>(edit: NotebookEdit<Kept>): Promise<Kept> {
  return database().write((tables) => editIn(tables, edit))
}

type NotebookEdit<Kept> = {
  readonly id: string
  readonly household: Household
  readonly at: Date
  readonly change: (document: string) => Edit<Kept>
}

/** The same inside a write transaction that holds more than the edit. A refusal writes nothing here; the rest is the caller's. */
export async function editIn<Kept>(tables: Tables, edit: NotebookEdit<Kept>): Promise<Kept> {
  const before = await documentIn(tables, edit.id)
  const outcome = edit.change(before)
  if ('refused' in outcome) {
    return outcome.refused
  }
  if (outcome.document === before) {
    if (outcome.changed.length > 0) {
      throw new Error('An edit that leaves the document as it was cannot have changed an item.')
    }
    return outcome.kept
  }

  const saved = await tables.notebook.update({
    where: { id: edit.id },
    data: { document: outcome.document, edit: { increment: 1 }, updatedAt: edit.at },
    select: { edit: true },
  })
  for (const item of outcome.changed) {
    await moveMarks(tables, edit.id, item)
    await tables.change.create({
      data: {
        notebookId: edit.id,
        edit: saved.edit,
        at: edit.at,
        household: edit.household,
        itemKey: item.itemKey,
        previousKey: item.previousKey ?? null,
        before: textOf(item.before),
        after: textOf(item.after),
      },
    })
  }
  return outcome.kept
}

async function moveMarks(tables: Tables, notebookId: string, item: ItemChange): Promise<void> {
  const { itemKey, previousKey, marksStay } = item
  if (marksStay === undefined) {
    const where = { notebookId, itemKey: { in: [itemKey, previousKey ?? itemKey] } }
    await tables.mark.deleteMany({ where })
    return
  }
  const where = { notebookId, itemKey, fingerprint: marksStay.before }
  await tables.mark.updateMany({ where, data: { fingerprint: marksStay.after } })
}

function textOf(value: unknown): string | null {
  return value === undefined || value === null ? null : JSON.stringify(value)
}
