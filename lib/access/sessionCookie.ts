import { cookies, headers } from 'next/headers'

const secondsInAYear = 365 * 24 * 60 * 60
const secondsToReadALink = 15 * 60

/** Remembers in this browser that it was let in to a notebook. Only in an action or a route handler. */
export async function setSessionCookie(notebookId: string, sessionToken: string): Promise<void> {
  await setCookie(sessionName(notebookId), sessionToken, notebookId, secondsInAYear)
}

/** This browser's session token for a notebook. */
export async function readSessionCookie(notebookId: string): Promise<string | undefined> {
  return readCookie(sessionName(notebookId))
}

/** Forgets it. Only in an action or a route handler. */
export async function clearSessionCookie(notebookId: string): Promise<void> {
  await setCookie(sessionName(notebookId), '', notebookId, 0)
}

/**
 * Carries a link that was just issued to the page that shows it, once: the link itself is stored nowhere, and in an
 * address it would stay in the browser's history. Only in an action or a route handler.
 */
export async function setNewLinkCookie(notebookId: string, linkToken: string): Promise<void> {
  await setCookie(newLinkName(notebookId), linkToken, notebookId, secondsToReadALink)
}

/** The token of the link that was just issued, while it waits to be read. */
export async function readNewLinkCookie(notebookId: string): Promise<string | undefined> {
  return readCookie(newLinkName(notebookId))
}

/** Forgets it, once it was noted down. Only in an action or a route handler. */
export async function clearNewLinkCookie(notebookId: string): Promise<void> {
  await setCookie(newLinkName(notebookId), '', notebookId, 0)
}

/** Remembers in which units this browser shows a notebook's lengths. Only in an action or a route handler. */
export async function setUnitsCookie(notebookId: string, units: string): Promise<void> {
  await setCookie(unitsName(notebookId), units, notebookId, secondsInAYear)
}

/** The units that this browser was asked to show, as a browser sends it: anything. */
export async function readUnitsCookie(notebookId: string): Promise<string | undefined> {
  return readCookie(unitsName(notebookId))
}

/** One cookie for each notebook: a household with two fences, or two neighbours, is in several. */
function sessionName(notebookId: string): string {
  return `mearing-${notebookId}`
}

function newLinkName(notebookId: string): string {
  return `mearing-new-link-${notebookId}`
}

function unitsName(notebookId: string): string {
  return `mearing-units-${notebookId}`
}

async function readCookie(name: string): Promise<string | undefined> {
  const value = (await cookies()).get(name)?.value
  return value === '' ? undefined : value
}

/** Scripts cannot read it, other sites cannot send it along, and no other notebook's pages get to see it. */
async function setCookie(name: string, value: string, notebookId: string, maxAge: number): Promise<void> {
  const jar = await cookies()
  jar.set(name, value, {
    httpOnly: true,
    sameSite: 'lax',
    path: `/notebook/${notebookId}`,
    maxAge,
    secure: await cameByHttps(),
  })
}

/** At a kitchen table the app is reached by plain http, where a browser would drop a cookie marked Secure. */
async function cameByHttps(): Promise<boolean> {
  const forwarded = (await headers()).get('x-forwarded-proto')
  return forwarded?.split(',')[0]?.trim().toLowerCase() === 'https'
}
