import type { Browser, BrowserContext } from '@playwright/test'
import { inject } from 'vitest'
import type { Household } from '../../../lib/core/people/household.ts'
import { documentText } from '../../../lib/forms/parts.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { claimInvitation, issueFirstLink, issueInvitation } from '../../../lib/store/entryKeys.ts'
import { createNotebook } from '../../../lib/store/notebooks.ts'
import { startSession } from '../../../lib/store/sessions.ts'
import { sessionCookie } from '../../actions/world.ts'
import { type Neighbours, openLaptop, openPhone } from '../twoHouseholds.ts'
import { openStore } from './storeBeside.ts'

/**
 * Two households that were let in to a notebook without a press: the document is stored as it is, marks in its books too.
 *
 * @param alone nobody has come in as the second household yet
 */
export async function seatedByTheStore(
  browser: Browser,
  document: object,
  alone = false,
): Promise<Neighbours> {
  openStore()
  const at = new Date()
  const { id } = await createNotebook({
    document: documentText(document as NotebookDocument),
    example: false,
    at,
  })
  const links = await linksTo(id, at, alone)
  const contexts = { a: await openLaptop(browser), b: await openPhone(browser) }
  const seat = async (household: Household) => {
    const link = links[household]
    if (link !== undefined) await letIn(contexts[household], id, link)
    return { page: await contexts[household].newPage(), home: `${inject('baseUrl')}/notebook/${id}` }
  }
  return {
    a: await seat('a'),
    b: await seat('b'),
    close: async () => {
      await contexts.a.close()
      await contexts.b.close()
    },
  }
}

/** The links of both households, or of the first alone. */
export async function linksTo(
  notebookId: string,
  at: Date,
  alone = false,
): Promise<{ readonly a: string; readonly b?: string }> {
  const { token: a } = await issueFirstLink({ notebookId, household: 'a', at })
  if (alone) return { a }
  const invited = await issueInvitation({ notebookId, at })
  const claimed = 'token' in invited ? await claimInvitation({ token: invited.token, at }) : invited
  if (!('token' in claimed)) throw new Error('Somebody has come in already.')
  return { a, b: claimed.token }
}

/** Lets a browser in by a link, as opening it would. */
export async function letIn(context: BrowserContext, notebookId: string, linkToken: string): Promise<void> {
  const session = await startSession({ linkToken, at: new Date() })
  if (session === undefined) throw new Error('This link lets nobody in.')
  const { origin } = new URL(inject('baseUrl'))
  await context.addCookies([
    {
      name: sessionCookie(notebookId),
      value: session.token,
      url: `${origin}/notebook/${notebookId}`,
      httpOnly: true,
    },
  ])
}
