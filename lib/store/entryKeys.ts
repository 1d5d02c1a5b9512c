import type { Household } from '../core/people/household.ts'
import { database, type Tables } from './database.ts'
import { putOnRecord } from './happenings.ts'
import { looksLikeToken, newToken } from './randomToken.ts'
import { sha256Hex } from './sha256.ts'
import { storedHousehold } from './storedHousehold.ts'

/** A link lets its household in; an invitation lets the second household make a link of its own, once. */
export type EntryKey = {
  readonly id: string
  readonly notebookId: string
  readonly household: Household
  readonly kind: 'link' | 'invitation'
  readonly createdAt: Date
  /** When the invitation was claimed. */
  readonly usedAt?: Date
  readonly revokedAt?: Date
}

/** A key just made. The token is shown once and cannot be had again: only its hash is stored. */
export type IssuedKey = { readonly token: string }

/** The key that a token stands for, whatever has become of it since. */
export async function findEntryKey(token: string): Promise<EntryKey | undefined> {
  return looksLikeToken(token) ? database().read((tables) => entryKeyIn(tables, token)) : undefined
}

/** The key that a token stands for, inside a write transaction or committed. */
export async function entryKeyIn(tables: Tables, token: string): Promise<EntryKey | undefined> {
  const row = await tables.entryKey.findUnique({ where: { tokenHash: sha256Hex(token) } })
  if (row === null) {
    return undefined
  }
  return {
    id: row.id,
    notebookId: row.notebookId,
    household: storedHousehold(row.household),
    kind: row.kind === 'link' ? 'link' : 'invitation',
    createdAt: row.createdAt,
    ...(row.usedAt === null ? {} : { usedAt: row.usedAt }),
    ...(row.revokedAt === null ? {} : { revokedAt: row.revokedAt }),
  }
}

/**
 * Gives a household its first link: to household a of a new notebook, and to either of the example. Everywhere else the
 * second household's link comes out of an invitation that it claims itself, so that neither can act for the other.
 * Throws when the household already has a link, and when it has to be invited.
 */
export async function issueFirstLink(first: {
  readonly notebookId: string
  readonly household: Household
  readonly at: Date
}): Promise<IssuedKey> {
  const { notebookId, household, at } = first
  return database().write(async (tables) => {
    const { example } = await tables.notebook.findUniqueOrThrow({ where: { id: notebookId } })
    if (household === 'b' && !example) {
      throw new Error('The second household gets its link by claiming an invitation.')
    }
    if (await holdsLink(tables, notebookId, household)) {
      throw new Error('The household has a link already; only the household itself can replace it.')
    }
    await putOnRecord(tables, { notebookId, household, at, kind: 'link', detail: { link: 'first' } })
    return issueIn(tables, { notebookId, household, kind: 'link', at })
  })
}

/**
 * Invites the second household. Earlier invitations that nobody has claimed are revoked; once the second household has
 * a link of its own there is nobody left to invite.
 */
export async function issueInvitation(invitation: {
  readonly notebookId: string
  readonly at: Date
}): Promise<IssuedKey | { readonly refused: 'already-claimed' }> {
  const { notebookId, at } = invitation
  return database().write(async (tables) => {
    if (await holdsLink(tables, notebookId, 'b')) {
      return { refused: 'already-claimed' }
    }
    await tables.entryKey.updateMany({
      where: { notebookId, kind: 'invitation', usedAt: null, revokedAt: null },
      data: { revokedAt: at },
    })
    await putOnRecord(tables, {
      notebookId,
      household: 'a',
      at,
      kind: 'link',
      detail: { link: 'invitation' },
    })
    return issueIn(tables, { notebookId, household: 'b', kind: 'invitation', at })
  })
}

/** Turns an invitation into the second household's own link. Of two that claim at once, one wins. */
export async function claimInvitation(claim: {
  readonly token: string
  readonly at: Date
}): Promise<
  | (IssuedKey & { readonly notebookId: string; readonly household: Household })
  | { readonly refused: 'unknown' | 'used' }
> {
  if (!looksLikeToken(claim.token)) {
    return { refused: 'unknown' }
  }
  return database().write(async (tables) => {
    const key = await entryKeyIn(tables, claim.token)
    if (key === undefined || key.kind !== 'invitation' || key.revokedAt !== undefined) {
      return { refused: 'unknown' }
    }
    const { notebookId, household } = key
    if (key.usedAt !== undefined || (await holdsLink(tables, notebookId, household))) {
      return { refused: 'used' }
    }
    await tables.entryKey.update({ where: { id: key.id }, data: { usedAt: claim.at } })
    await putOnRecord(tables, {
      notebookId,
      household,
      at: claim.at,
      kind: 'link',
      detail: { link: 'claimed' },
    })
    const link = await issueIn(tables, { notebookId, household, kind: 'link', at: claim.at })
    return { ...link, notebookId, household }
  })
}

/**
 * Replaces a household's own link: the old one no longer lets anyone in, and every browser it let in is out.
 * Throws when the household has no link to replace.
 */
export async function replaceLink(replacement: {
  readonly notebookId: string
  readonly household: Household
  readonly at: Date
}): Promise<IssuedKey> {
  const { notebookId, household, at } = replacement
  return database().write(async (tables) => {
    if (!(await holdsLink(tables, notebookId, household))) {
      throw new Error('The household has no link to replace.')
    }
    await tables.entryKey.updateMany({
      where: { notebookId, household, kind: 'link', revokedAt: null },
      data: { revokedAt: at },
    })
    await tables.session.updateMany({
      where: { notebookId, household, endedAt: null },
      data: { endedAt: at },
    })
    await putOnRecord(tables, { notebookId, household, at, kind: 'link', detail: { link: 'replaced' } })
    return issueIn(tables, { notebookId, household, kind: 'link', at })
  })
}

/** Whether the household has come in yet: whether it has a link of its own. */
export async function hasLink(notebookId: string, household: Household): Promise<boolean> {
  return database().read((tables) => holdsLink(tables, notebookId, household))
}

/** The invitation that waits to be claimed: when it was issued. */
export async function openInvitation(notebookId: string): Promise<{ createdAt: Date } | undefined> {
  const row = await database().read((tables) =>
    tables.entryKey.findFirst({
      where: { notebookId, kind: 'invitation', usedAt: null, revokedAt: null },
      select: { createdAt: true },
    }),
  )
  return row ?? undefined
}

/** A household that ever had a link has one now: the only way to lose it is to replace it. */
async function holdsLink(tables: Tables, notebookId: string, household: Household): Promise<boolean> {
  return (await tables.entryKey.count({ where: { notebookId, household, kind: 'link' } })) > 0
}

async function issueIn(
  tables: Tables,
  key: {
    readonly notebookId: string
    readonly household: Household
    readonly kind: 'link' | 'invitation'
    readonly at: Date
  },
): Promise<IssuedKey> {
  const token = newToken()
  const { at, ...whom } = key
  await tables.entryKey.create({ data: { ...whom, tokenHash: sha256Hex(token), createdAt: at } })
  return { token }
}
