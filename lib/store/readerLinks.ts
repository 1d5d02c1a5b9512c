import type { Household } from '../core/people/household.ts'
import { database, type Tables } from './database.ts'
import { putOnRecord } from './happenings.ts'
import { looksLikeToken, newToken } from './randomToken.ts'
import { sha256Hex } from './sha256.ts'
import { storedHousehold } from './storedHousehold.ts'

/** What a reader may see: the agreement without costs, with costs, or everything that the households see. */
export const readerContents = ['summary', 'costs', 'everything'] as const
export type ReaderContent = (typeof readerContents)[number]

/** A link for somebody who only reads. */
export type ReaderLink = {
  readonly id: string
  readonly notebookId: string
  readonly content: ReaderContent
  /** For whom, in words. */
  readonly label: string
  readonly createdAt: Date
  readonly createdBy: Household
  /** From this moment on it opens nothing. */
  readonly expiresAt: Date
  readonly revokedAt?: Date
  readonly revokedBy?: Household
}

export type ReaderVisit = { readonly what: string; readonly at: Date }

/**
 * The same thing opened again within this time is one opening: a browser that asks twice is one reader, and whoever
 * holds a link can't fill the disk with it. In milliseconds.
 */
export const oneOpening = 60_000

/** A link as the households see it: with how often it was opened, and the newest of the openings. */
export type ReaderLinkWithVisits = ReaderLink & {
  readonly openings: number
  readonly visits: readonly ReaderVisit[]
}

/** Makes a link; the token is shown once and cannot be had again. */
export async function makeReaderLink(link: {
  readonly notebookId: string
  readonly household: Household
  readonly content: ReaderContent
  readonly label: string
  readonly expiresAt: Date
  readonly at: Date
}): Promise<{ readonly token: string }> {
  const { notebookId, household, content, label, expiresAt, at } = link
  const token = newToken()
  await database().write(async (tables) => {
    await tables.readerLink.create({
      data: {
        notebookId,
        tokenHash: sha256Hex(token),
        content,
        label,
        createdAt: at,
        createdBy: household,
        expiresAt,
      },
    })
    const detail = { reader: 'made', label, content, expiresAt: expiresAt.toISOString() }
    await putOnRecord(tables, { notebookId, household, at, kind: 'reader', detail })
  })
  return { token }
}

/** The links of a notebook with their newest `shown` openings, newest first. */
export async function readerLinksOf(notebookId: string, shown = 50): Promise<ReaderLinkWithVisits[]> {
  const rows = await database().read((tables) =>
    tables.readerLink.findMany({
      where: { notebookId },
      // Ids rise with time: of two that were made in the same moment the later comes first.
      orderBy: [{ createdAt: 'desc' }, { id: 'desc' }],
      include: {
        visits: { orderBy: { id: 'desc' }, select: { what: true, at: true }, take: shown },
        _count: { select: { visits: true } },
      },
    }),
  )
  return rows.map(({ visits, _count, ...row }) => ({ ...linkFrom(row), openings: _count.visits, visits }))
}

/** Ends a link for good; either household may. Says whether there was one to end. */
export async function revokeReaderLink(ending: {
  readonly notebookId: string
  readonly id: string
  readonly household: Household
  readonly at: Date
}): Promise<boolean> {
  const { notebookId, id, household, at } = ending
  return database().write(async (tables) => {
    const link = await tables.readerLink.findUnique({ where: { id, notebookId } })
    if (link === null || link.revokedAt !== null) return false
    await tables.readerLink.update({ where: { id }, data: { revokedAt: at, revokedBy: household } })
    const detail = { reader: 'ended', label: link.label }
    await putOnRecord(tables, { notebookId, household, at, kind: 'reader', detail })
    return true
  })
}

/** Whether a reader's link stands: neither ended nor expired. Nothing is logged, since nothing is opened. */
export async function readerLinkStands(token: string, at: Date): Promise<boolean> {
  if (!looksLikeToken(token)) return false
  const where = { tokenHash: sha256Hex(token), revokedAt: null, expiresAt: { gt: at } }
  return (await database().read((tables) => tables.readerLink.count({ where }))) > 0
}

/**
 * Opens something by a reader's link and logs that it was opened, in one transaction. Undefined for whatever is no link,
 * is revoked or has expired, and where `holds` says that this kind of link does not hold it; nothing is logged then.
 */
export async function openByReaderLink(opening: {
  readonly token: string
  readonly what: string
  readonly holds: (content: ReaderContent) => boolean
  readonly at: Date
}): Promise<ReaderLink | undefined> {
  const { token, what, at } = opening
  if (!looksLikeToken(token)) return undefined
  const goodLink = async (tables: Tables) => {
    const row = await tables.readerLink.findUnique({ where: { tokenHash: sha256Hex(token) } })
    if (row === null) return undefined
    const link = linkFrom(row)
    return link.revokedAt === undefined && at < link.expiresAt && opening.holds(link.content)
      ? link
      : undefined
  }
  // Strangers who try tokens must not keep the households from writing, so the door for writing is only for good links.
  if ((await database().read(goodLink)) === undefined) return undefined
  return database().write(async (tables) => {
    const link = await goodLink(tables)
    if (link === undefined) return undefined
    // On both sides of now: a clock that was set back must not stop the log until it has caught up.
    const [after, before] = [new Date(at.getTime() - oneOpening), new Date(at.getTime() + oneOpening)]
    const same = { readerLinkId: link.id, what, at: { gt: after, lt: before } }
    if ((await tables.readerVisit.count({ where: same })) === 0) {
      await tables.readerVisit.create({ data: { readerLinkId: link.id, what, at } })
    }
    return link
  })
}

type Row = NonNullable<Awaited<ReturnType<Tables['readerLink']['findUnique']>>>

function linkFrom(row: Row): ReaderLink {
  const { tokenHash: _secret, revokedAt, revokedBy, ...link } = row
  const content = readerContents.find((one) => one === row.content)
  if (content === undefined) throw new Error(`The database holds a reader's link for ${row.content}.`)
  return {
    ...link,
    content,
    createdBy: storedHousehold(row.createdBy),
    ...(revokedAt === null ? {} : { revokedAt }),
    ...(revokedBy === null ? {} : { revokedBy: storedHousehold(revokedBy) }),
  }
}
