import type { Household } from '../core/people/household.ts'
import { database } from './database.ts'
import { putOnRecord } from './happenings.ts'
import type { HistoryHead } from './historyChain.ts'
import { sha256Hex } from './sha256.ts'

/** The locked copy of a revision, as it is kept. */
export type SealedPaper = {
  readonly revisionId: string
  readonly bytes: Uint8Array
  /** Of the bytes, hex. */
  readonly sha256: string
  /** SHA-256 of the certificate that it was sealed with, hex. */
  readonly certificate: string
  /** Where the history stood when it was sealed, as the paper prints it. */
  readonly history: HistoryHead
  readonly sealedAt: Date
}

/** The locked copy of a revision; undefined while there is none. Throws where the stored bytes are not those sealed. */
export async function sealedPaperOf(revisionId: string): Promise<SealedPaper | undefined> {
  const row = await database().read((tables) => tables.sealedPaper.findUnique({ where: { revisionId } }))
  if (row === null) return undefined
  if (sha256Hex(row.bytes) !== row.sha256) {
    throw new Error('The stored locked copy is not the one that was sealed: the database file was altered.')
  }
  const { historyEntry, historyHash, ...paper } = row
  return { ...paper, history: { entry: historyEntry, hash: historyHash } }
}

/** When each revision of a notebook was sealed, without reading the papers. */
export async function sealsOf(notebookId: string): Promise<ReadonlyMap<string, Omit<SealedPaper, 'bytes'>>> {
  const rows = await database().read((tables) =>
    tables.sealedPaper.findMany({ where: { revision: { notebookId } }, omit: { bytes: true } }),
  )
  return new Map(
    rows.map(({ historyEntry, historyHash, ...paper }) => [
      paper.revisionId,
      { ...paper, history: { entry: historyEntry, hash: historyHash } },
    ]),
  )
}

/**
 * Keeps the locked copy of a revision that all have signed. Whoever comes second, after a restart in the middle or from
 * another request, finds the first one kept and gets that: a revision has one locked copy for good.
 */
export async function keepSealedPaper(sealing: {
  readonly notebookId: string
  readonly revisionId: string
  /** Whose request made the seal. */
  readonly household: Household
  readonly bytes: Uint8Array
  readonly certificate: string
  readonly history: HistoryHead
  readonly at: Date
}): Promise<void> {
  const { notebookId, revisionId, household, certificate, history, at } = sealing
  // Prisma wants bytes of a buffer that is nobody else's.
  const bytes = Uint8Array.from(sealing.bytes)
  const sha256 = sha256Hex(bytes)
  await database().write(async (tables) => {
    if ((await tables.sealedPaper.count({ where: { revisionId } })) > 0) return
    const { number } = await tables.revision.findUniqueOrThrow({
      where: { id: revisionId, notebookId },
      select: { number: true },
    })
    await tables.sealedPaper.create({
      data: {
        revisionId,
        bytes,
        sha256,
        certificate,
        historyEntry: history.entry,
        historyHash: history.hash,
        sealedAt: at,
      },
    })
    const detail = { revision: number, sha256, certificate }
    await putOnRecord(tables, { notebookId, household, at, kind: 'seal', detail })
  })
}

/** Whether this install has ever made a locked copy: then it had a key. */
export async function anythingSealed(): Promise<boolean> {
  return (await database().read((tables) => tables.sealedPaper.count({ take: 1 }))) > 0
}

/** The revision that a locked copy of these bytes belongs to, for checking a record; undefined where none is kept. */
export async function revisionSealedAs(
  sha256: string,
): Promise<{ readonly number: number; readonly newest: boolean; readonly newestSealed: number } | undefined> {
  return database().read(async (tables) => {
    const row = await tables.sealedPaper.findFirst({
      where: { sha256 },
      select: { revision: { select: { number: true, notebookId: true } } },
    })
    if (row === null) return undefined
    const newest = await tables.sealedPaper.findFirst({
      where: { revision: { notebookId: row.revision.notebookId } },
      orderBy: { revision: { number: 'desc' } },
      select: { revision: { select: { number: true } } },
    })
    const newestSealed = newest?.revision.number ?? row.revision.number
    return { number: row.revision.number, newest: row.revision.number === newestSealed, newestSealed }
  })
}
