import { notFound } from 'next/navigation'
import type { Household } from '../core/people/household.ts'
import { looksLikeNotebookId } from '../store/randomToken.ts'
import { findSession } from '../store/sessions.ts'
import { readSessionCookie } from './sessionCookie.ts'

/** The household that asks, and the notebook that it may see. */
export type Asker = { readonly notebookId: string; readonly household: Household }

/** Who asks for a notebook, by this browser's session cookie; undefined for everyone who was not let in to it. */
export async function whoAsks(notebookId: string): Promise<Asker | undefined> {
  if (!looksLikeNotebookId(notebookId)) {
    return undefined
  }
  const token = await readSessionCookie(notebookId)
  const session = token === undefined ? undefined : await findSession(token)
  return session?.notebookId === notebookId ? session : undefined
}

/**
 * The guard of every page and action of a notebook. Whoever was not let in gets the "not found" of a notebook that never
 * was, so that nobody can find out which notebooks there are. (It ends the request by throwing, as Next does.)
 */
export async function requireHousehold(notebookId: string): Promise<Asker> {
  return (await whoAsks(notebookId)) ?? notFound()
}
