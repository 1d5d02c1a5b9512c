import type { Household } from '../core/people/household.ts'
import { database } from './database.ts'
import { entryKeyIn } from './entryKeys.ts'
import { looksLikeToken, newToken } from './randomToken.ts'
import { sha256Hex } from './sha256.ts'
import { storedHousehold } from './storedHousehold.ts'

/** Whom a browser was let in as, and to which notebook. */
export type Session = { readonly notebookId: string; readonly household: Household }

/** Lets a browser in by a household's link. Undefined for anything that is not a link, or no longer. */
export async function startSession(start: {
  readonly linkToken: string
  readonly at: Date
}): Promise<(Session & { readonly token: string }) | undefined> {
  if (!looksLikeToken(start.linkToken)) {
    return undefined
  }
  return database().write(async (tables) => {
    const key = await entryKeyIn(tables, start.linkToken)
    if (key === undefined || key.kind !== 'link' || key.revokedAt !== undefined) {
      return undefined
    }
    const token = newToken()
    const { notebookId, household } = key
    await tables.session.create({
      data: { tokenHash: sha256Hex(token), notebookId, household, entryKeyId: key.id, createdAt: start.at },
    })
    return { token, notebookId, household }
  })
}

/** The session a browser's token stands for, as long as it has not ended and its link has not been revoked. */
export async function findSession(token: string): Promise<Session | undefined> {
  if (!looksLikeToken(token)) {
    return undefined
  }
  const row = await database().read((tables) =>
    tables.session.findFirst({
      where: { tokenHash: sha256Hex(token), endedAt: null, entryKey: { is: { revokedAt: null } } },
    }),
  )
  return row === null ? undefined : { notebookId: row.notebookId, household: storedHousehold(row.household) }
}

/** Ends one browser's session; a token that is unknown, or ended already, changes nothing. */
export async function endSession(end: { readonly token: string; readonly at: Date }): Promise<void> {
  if (!looksLikeToken(end.token)) {
    return
  }
  await database().write((tables) =>
    tables.session.updateMany({
      where: { tokenHash: sha256Hex(end.token), endedAt: null },
      data: { endedAt: end.at },
    }),
  )
}
