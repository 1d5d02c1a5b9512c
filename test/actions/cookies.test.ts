import { describe, expect, test, vi } from 'vitest'
import { addNotebookItem, agreeToItem } from '../../app/notebook/server/actions.ts'
import { forgetNewLink, leave, replaceOwnLink, seeAsOther } from '../../app/notebook/server/linkActions.ts'
import { claim, openByLink } from '../../app/open/[token]/actions.ts'
import { openExample, startFromFile, startNotebook } from '../../app/start/actions.ts'
import { findEntryKey } from '../../lib/store/entryKeys.ts'
import { findSession } from '../../lib/store/sessions.ts'
import { keptCookies, openBrowser, setCookieHeaders } from './browser.ts'
import { everyTable } from './everyTable.ts'
import { aHeading, aNewSection, changedFile, formOf, formWithFile, markForm } from './givenForms.ts'
import { type Outcome, outcomeOf } from './outcome.ts'
import { browseAs, sessionCookie, type World, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()
const form = () => new FormData()

type Kept = 'a session' | 'a session and a new link' | 'no session' | 'no new link'

/** Every action that sets a cookie, in a browser that has reason to press it. */
const setters: Readonly<
  Record<string, { readonly press: (world: World) => Promise<unknown>; readonly keeps: Kept }>
> = {
  startNotebook: { press: () => startNotebook('new', aHeading), keeps: 'a session and a new link' },
  startFromFile: {
    press: () => startFromFile({}, formWithFile(changedFile())),
    keeps: 'a session and a new link',
  },
  openExample: { press: () => openExample({}, formOf({ household: 'b' })), keeps: 'a session' },
  openByLink: { press: ({ notebook }) => openByLink(notebook.links.b, {}, form()), keeps: 'a session' },
  claim: { press: ({ waiting }) => claim(waiting.invitation, {}, form()), keeps: 'a session and a new link' },
  replaceOwnLink: {
    press: ({ notebook }) => replaceOwnLink(notebook.id, {}, form()),
    keeps: 'a session and a new link',
  },
  seeAsOther: { press: ({ example }) => seeAsOther(example.id, {}, form()), keeps: 'a session' },
  leave: { press: ({ notebook }) => leave(notebook.id, {}, form()), keeps: 'no session' },
  forgetNewLink: { press: ({ notebook }) => forgetNewLink(notebook.id, {}, form()), keeps: 'no new link' },
}

/** A browser that is in wherever one of these presses needs it to be. */
function browseEverywhere(withHeaders: Record<string, string> = {}): void {
  const { notebook, example } = world()
  openBrowser(
    { [sessionCookie(notebook.id)]: notebook.sessions.b, [sessionCookie(example.id)]: example.session },
    withHeaders,
  )
}

type SetCookie = {
  readonly name: string
  readonly value: string
  readonly attributes: Readonly<Record<string, string>>
}

/** A Set-Cookie header, as RFC 6265 section 4.1.1 writes it; attribute names in small letters. */
function parsed(header: string): SetCookie {
  const [pair = '', ...rest] = header.split('; ')
  const [name = '', value = ''] = pair.split('=')
  const attributes = Object.fromEntries(
    rest.map((one) => [one.split('=')[0]?.toLowerCase(), one.split('=')[1] ?? 'set']),
  )
  return { name, value, attributes }
}

describe.each(Object.entries(setters))('%s', (_name, { press, keeps }) => {
  test.each([
    ['http', undefined],
    ['https', 'set'],
  ])(
    'over %s sets cookies that scripts, other sites and other notebooks cannot reach',
    async (protocol, secure) => {
      browseEverywhere({ 'x-forwarded-proto': protocol })
      const end = await outcomeOf(() => press(world()))
      expect(end.kind).toBe('redirect')
      const told = setCookieHeaders().map(parsed)
      expect(told.length).toBe(keeps === 'a session and a new link' ? 2 : 1)
      for (const { name, attributes } of told) {
        const id = name.replace(/^mearing-(new-link-)?/, '')
        expect(id).toMatch(/^[A-Za-z0-9_-]{22}$/)
        expect(attributes).toMatchObject({ httponly: 'set', samesite: 'lax', path: `/notebook/${id}` })
        expect(attributes.secure).toBe(secure)
        expect(attributes).not.toHaveProperty('domain')
      }
      const year = String(365 * 24 * 60 * 60)
      const ages = told.map(({ name, attributes }) => [
        name.startsWith('mearing-new-link-'),
        attributes['max-age'],
      ])
      expect(ages).toEqual(
        {
          'a session': [[false, year]],
          'a session and a new link': [
            [false, year],
            [true, '900'],
          ],
          'no session': [[false, '0']],
          'no new link': [[true, '0']],
        }[keeps],
      )
    },
  )

  test('tells the browser a token that works, and nobody else: no address, no table', async () => {
    browseEverywhere()
    const end = await outcomeOf(() => press(world()))
    const told = setCookieHeaders()
      .map(parsed)
      .filter(({ value }) => value !== '')
    expect(told.length).toBe(keeps.startsWith('no ') ? 0 : keeps === 'a session' ? 1 : 2)
    const stored = JSON.stringify(await everyTable())
    for (const { name, value } of told) {
      expect(value).toMatch(/^[A-Za-z0-9_-]{43}$/)
      expect(addressOf(end)).not.toContain(value)
      expect(stored).not.toContain(value)
      const found = name.startsWith('mearing-new-link-')
        ? await findEntryKey(value)
        : await findSession(value)
      expect(found).toMatchObject({ notebookId: name.replace(/^mearing-(new-link-)?/, '') })
    }
  })
})

function addressOf(end: Outcome): string {
  expect(end.kind).toBe('redirect')
  return (end as { to: string }).to
}

test('no redirect leads to an address with a token in it', async () => {
  const there = world()
  const { notebook, waiting } = there
  const secrets = [
    ...Object.values(notebook.links),
    ...Object.values(notebook.sessions),
    notebook.usedInvitation,
    waiting.invitation,
    waiting.link,
  ]
  const ends: Outcome[] = []
  for (const { press } of Object.values(setters)) {
    browseEverywhere()
    ends.push(await outcomeOf(() => press(there)))
    secrets.push(...Object.values(keptCookies()))
  }
  browseAs(there, 'a')
  ends.push(await outcomeOf(() => addNotebookItem(notebook.id, 'section', 'new', aNewSection)))
  ends.push(await outcomeOf(async () => agreeToItem(notebook.id, {}, await markForm(notebook.id, 'line'))))
  const addresses = ends.flatMap((end) => (end.kind === 'redirect' ? [end.to] : []))
  expect(addresses.length).toBeGreaterThan(7)
  for (const address of addresses) {
    expect(address).toMatch(/^\/(notebook\/[A-Za-z0-9_-]{22}(\/[a-z]+(\/[a-z0-9]+)?)?)?$/)
    expect(secrets.filter((secret) => address.includes(secret))).toEqual([])
  }
})

test('leaving ends the session on the server, too, and forgetting the new link forgets only that', async () => {
  const { notebook } = world()
  browseAs(world(), 'b')
  await outcomeOf(() => replaceOwnLink(notebook.id, {}, form()))
  const { [sessionCookie(notebook.id)]: session = '', [`mearing-new-link-${notebook.id}`]: link = '' } =
    keptCookies()
  await outcomeOf(() => forgetNewLink(notebook.id, {}, form()))
  expect(keptCookies()).toEqual({ [sessionCookie(notebook.id)]: session })
  expect(await findSession(session)).toMatchObject({ household: 'b' })
  await outcomeOf(() => leave(notebook.id, {}, form()))
  expect(keptCookies()).toEqual({})
  expect(await findSession(session)).toBeUndefined()
  expect(await findEntryKey(link)).toMatchObject({ kind: 'link', household: 'b' })
})
