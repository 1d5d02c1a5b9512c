import { type FileKind, fileKinds, type MediaType, mediaTypes } from '../core/agreement/attachedFile.ts'
import type { Household } from '../core/people/household.ts'
import { database, type Tables } from './database.ts'
import { putOnRecord } from './happenings.ts'
import { storedHousehold } from './storedHousehold.ts'

/** What is known about a file; its bytes lie in the data folder under their hash. */
export type StoredFile = {
  readonly id: string
  /** Of the bytes as they are stored, hex. */
  readonly sha256: string
  readonly name: string
  readonly mediaType: MediaType
  readonly size: number
  readonly kind: FileKind
  readonly caption: string
  /** The item that it belongs to; undefined: the whole notebook. */
  readonly itemKey?: string
  readonly household: Household
  readonly addedAt: Date
  readonly removedAt?: Date
  readonly removedBy?: Household
}

/** The files of a notebook, oldest first; those taken away too where `all` asks for them. */
export async function filesOf(notebookId: string, all = false): Promise<StoredFile[]> {
  const rows = await database().read((tables) =>
    tables.storedFile.findMany({
      where: { notebookId, ...(all ? {} : { removedAt: null }) },
      // Ids rise with time: two that were added in the same moment stay in their order.
      orderBy: [{ addedAt: 'asc' }, { id: 'asc' }],
    }),
  )
  return rows.map(fileFrom)
}

/** One file of a notebook that was not taken away. */
export async function findFile(notebookId: string, id: string): Promise<StoredFile | undefined> {
  const row = await database().read((tables) =>
    tables.storedFile.findUnique({ where: { id, notebookId, removedAt: null } }),
  )
  return row === null ? undefined : fileFrom(row)
}

/** Whether two files show the same of the same: bytes, kind and item. */
export function isSameFile(one: StoredFile, other: StoredFile): boolean {
  return one.sha256 === other.sha256 && one.kind === other.kind && one.itemKey === other.itemKey
}

/** Puts a file on record whose bytes are on disk already: a row never points at nothing. */
export async function recordFile(file: {
  readonly notebookId: string
  readonly household: Household
  readonly sha256: string
  readonly name: string
  readonly mediaType: MediaType
  readonly size: number
  readonly kind: FileKind
  readonly caption: string
  readonly itemKey?: string
  readonly at: Date
}): Promise<{ readonly id: string }> {
  const { at, itemKey, ...known } = file
  const { notebookId, household, sha256, name, kind, caption } = file
  return database().write(async (tables) => {
    const row = await tables.storedFile.create({
      data: { ...known, itemKey: itemKey ?? null, addedAt: at },
      select: { id: true },
    })
    await putOnRecord(tables, {
      notebookId,
      household,
      at,
      kind: 'file',
      ...(itemKey === undefined ? {} : { itemKey }),
      detail: { file: 'added', name, kind, caption, sha256 },
    })
    return row
  })
}

/** Takes a file away: it is shown no more, stays on record, and its bytes stay on disk. Says whether there was one. */
export async function takeFileAway(taking: {
  readonly notebookId: string
  readonly id: string
  readonly household: Household
  readonly at: Date
}): Promise<boolean> {
  const { notebookId, id, household, at } = taking
  return database().write(async (tables) => {
    const row = await tables.storedFile.findUnique({ where: { id, notebookId, removedAt: null } })
    if (row === null) return false
    await tables.storedFile.update({ where: { id }, data: { removedAt: at, removedBy: household } })
    const { name, sha256, itemKey } = row
    await putOnRecord(tables, {
      notebookId,
      household,
      at,
      kind: 'file',
      ...(itemKey === null ? {} : { itemKey }),
      detail: { file: 'taken away', name, sha256 },
    })
    return true
  })
}

type Row = Awaited<ReturnType<Tables['storedFile']['findMany']>>[number]

function fileFrom(row: Row): StoredFile {
  const { notebookId: _same, itemKey, removedAt, removedBy, ...file } = row
  const mediaType = mediaTypes.find((one) => one === row.mediaType)
  const kind = fileKinds.find((one) => one === row.kind)
  if (mediaType === undefined || kind === undefined)
    throw new Error('The database holds a file of a kind that this program does not know.')
  return {
    ...file,
    mediaType,
    kind,
    household: storedHousehold(row.household),
    ...(itemKey === null ? {} : { itemKey }),
    ...(removedAt === null ? {} : { removedAt }),
    ...(removedBy === null ? {} : { removedBy: storedHousehold(removedBy) }),
  }
}
