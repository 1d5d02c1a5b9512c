import { setNewLinkCookie, setSessionCookie } from '../../../lib/access/sessionCookie.ts'
import { assert } from '../../../lib/core/assert.ts'
import { startSession } from '../../../lib/store/sessions.ts'

/** Lets this browser in by a household's link. Only in an action. */
export async function letIn(notebookId: string, linkToken: string): Promise<void> {
  const session = await startSession({ linkToken, at: new Date() })
  assert(session?.notebookId === notebookId, 'a link that was just issued lets its household in')
  await setSessionCookie(notebookId, session.token)
}

/** Lets this browser in by a link that was just issued, and carries the link to the page that shows it once. */
export async function letInAndShowLink(notebookId: string, linkToken: string): Promise<void> {
  await letIn(notebookId, linkToken)
  await setNewLinkCookie(notebookId, linkToken)
}
