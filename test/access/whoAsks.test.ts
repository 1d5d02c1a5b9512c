import { beforeEach, describe, expect, test, vi } from 'vitest'
import {
  clearNewLinkCookie,
  clearSessionCookie,
  readNewLinkCookie,
  readSessionCookie,
  setNewLinkCookie,
  setSessionCookie,
} from '../../lib/access/sessionCookie.ts'
import { requireHousehold, whoAsks } from '../../lib/access/whoAsks.ts'
import { issueFirstLink, replaceLink } from '../../lib/store/entryKeys.ts'
import { createNotebook } from '../../lib/store/notebooks.ts'
import { newToken } from '../../lib/store/randomToken.ts'
import { endSession, startSession } from '../../lib/store/sessions.ts'
import { temporaryDatabaseForEachTest } from '../store/temporaryDatabase.ts'
import { cookieAsSet, openBrowser } from './browser.ts'

vi.mock('next/headers', () => import('./browser.ts'))
temporaryDatabaseForEachTest()

const at = new Date('2025-06-01T18:00:00Z')

beforeEach(() => {
  openBrowser()
})

async function notebookWithSession(): Promise<{ id: string; session: string }> {
  const { id } = await createNotebook({ document: '{}', example: false, at })
  const { token } = await issueFirstLink({ notebookId: id, household: 'a', at })
  const session = await startSession({ linkToken: token, at })
  return { id, session: session?.token ?? '' }
}

/** How the guard's refusal looks to Next; what distinguishes two refusals would show in it. */
async function refusal(notebookId: string): Promise<unknown> {
  try {
    return await requireHousehold(notebookId)
  } catch (error) {
    return error instanceof Error ? { ...error, said: error.message } : error
  }
}

describe('who asks', () => {
  test('is the household that this browser was let in as', async () => {
    const { id, session } = await notebookWithSession()
    await setSessionCookie(id, session)
    expect(await whoAsks(id)).toEqual({ notebookId: id, household: 'a' })
    expect(await requireHousehold(id)).toEqual({ notebookId: id, household: 'a' })
  })

  test('is told apart for each notebook the browser was let in to', async () => {
    const one = await notebookWithSession()
    const other = await notebookWithSession()
    await setSessionCookie(one.id, one.session)
    expect(await whoAsks(other.id)).toBeUndefined()
    await setSessionCookie(other.id, other.session)
    expect(await whoAsks(one.id)).toEqual({ notebookId: one.id, household: 'a' })
    expect(await whoAsks(other.id)).toEqual({ notebookId: other.id, household: 'a' })
  })

  test('is nobody with another notebook’s session, an ended one, a replaced link, or none: all "not found" alike', async () => {
    const { id, session } = await notebookWithSession()
    const unknown = await refusal('AAAAAAAAAAAAAAAAAAAAAA')
    // The digest by which Next tells "not found" from other errors, as next 16.4.6 spells it.
    expect(unknown).toMatchObject({ digest: 'NEXT_HTTP_ERROR_FALLBACK;404' })

    expect(await refusal(id)).toEqual(unknown)
    await setSessionCookie(id, (await notebookWithSession()).session)
    expect(await refusal(id)).toEqual(unknown)
    await setSessionCookie(id, newToken())
    expect(await refusal(id)).toEqual(unknown)
    await setSessionCookie(id, 'not a token')
    expect(await refusal(id)).toEqual(unknown)

    await setSessionCookie(id, session)
    expect(await refusal(id)).toEqual({ notebookId: id, household: 'a' })
    await endSession({ token: session, at })
    expect(await refusal(id)).toEqual(unknown)

    const next = await notebookWithSession()
    await setSessionCookie(next.id, next.session)
    await replaceLink({ notebookId: next.id, household: 'a', at })
    expect(await refusal(next.id)).toEqual(unknown)
    for (const odd of ['', '..', 'a; Path=/', `${id}x`, id.slice(1)]) {
      expect(await refusal(odd)).toEqual(unknown)
    }
  })
})

describe('the cookies', () => {
  test('are out of reach for scripts, other sites and other notebooks', async () => {
    await setSessionCookie('notebook-one', 'session')
    await setNewLinkCookie('notebook-one', 'link')
    const common = { httpOnly: true, sameSite: 'lax', path: '/notebook/notebook-one', secure: false }
    expect(cookieAsSet('mearing-notebook-one')).toEqual({
      value: 'session',
      options: { ...common, maxAge: 31_536_000 },
    })
    expect(cookieAsSet('mearing-new-link-notebook-one')).toEqual({
      value: 'link',
      options: { ...common, maxAge: 900 },
    })
  })

  test.each([
    ['https', true],
    ['https, http', true],
    ['HTTPS', true],
    ['http', false],
    ['http, https', false],
  ])('behind a proxy that says %j are secure: %s', async (said, secure) => {
    openBrowser({ 'x-forwarded-proto': said })
    await setSessionCookie('one', 'session')
    expect(cookieAsSet('mearing-one')?.options.secure).toBe(secure)
  })

  test('are read back, and gone once cleared, each by itself', async () => {
    await setSessionCookie('one', 'session')
    await setNewLinkCookie('one', 'link')
    expect(await readSessionCookie('one')).toBe('session')
    expect(await readNewLinkCookie('one')).toBe('link')
    expect(await readSessionCookie('two')).toBeUndefined()
    await clearNewLinkCookie('one')
    expect(await readNewLinkCookie('one')).toBeUndefined()
    expect(await readSessionCookie('one')).toBe('session')
    await clearSessionCookie('one')
    expect(await readSessionCookie('one')).toBeUndefined()
  })
})
