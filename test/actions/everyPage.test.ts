import type { ReactNode } from 'react'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import { openNotebook } from '../../app/notebook/server/opened.ts'
import { putUpForSigning } from '../../app/notebook/server/signActions.ts'
import { readerThings } from '../../lib/access/readerAccess.ts'
import type { Household } from '../../lib/core/people/household.ts'
import { findNotebook } from '../../lib/store/notebooks.ts'
import { shownMarkup } from '../shownMarkup.ts'
import { openBrowser } from './browser.ts'
import { everyTable } from './everyTable.ts'
import { accountOnRecord } from './givenAccount.ts'
import { anAddedPhoto, aPhoto, uploadRequest } from './givenFiles.ts'
import { type Outcome, outcomeOf } from './outcome.ts'
import { readerFile } from './readerFiles.ts'
import { type AnyFunction, everyAddress } from './serverFiles.ts'
import { browseAs, markEverything, strangers, type World, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
// Forms ask the router where they are, which only Next can say; nothing here is pressed.
vi.mock('next/navigation', async (original) => ({
  ...(await original<object>()),
  useRouter: () => ({}),
  usePathname: () => '/',
}))
const world = worldForEachTest()

beforeEach(async () => {
  const { notebook } = world()
  browseAs(world(), 'a')
  await markEverything(notebook.id)
  await outcomeOf(() => putUpForSigning(notebook.id, {}, new FormData()))
  fileId = await anAddedPhoto(notebook.id)
  await accountOnRecord(notebook.id)
})

/** What an address of a notebook names beside the notebook, and what it answers a household. */
type NotebookAddress = {
  readonly names?: Readonly<Record<string, string>> | (() => Readonly<Record<string, string>>)
  /** The same with a name that leads nowhere. */
  readonly namesNothing?: Readonly<Record<string, string>>
  readonly asks?: string
  readonly asksNothing?: string
  readonly answers: 'a page' | `${string}/${string}`
  /** Shown in its page instead of saved. */
  readonly shown?: true
}

const at = (file: string) => `app/notebook/[notebookId]/${file}`
const aPage = { answers: 'a page' } as const

/** A photo that household a added before each test. */
let fileId = ''
const aFile = {
  names: () => ({ fileId }),
  namesNothing: { fileId: '00000000-0000-4000-8000-000000000000' },
  shown: true,
} as const

const ofNotebooks: Readonly<Record<string, NotebookAddress>> = {
  [at('page.tsx#default')]: aPage,
  [at('arrangements/page.tsx#default')]: aPage,
  [at('add/[kind]/page.tsx#default')]: {
    ...aPage,
    names: { kind: 'gate' },
    namesNothing: { kind: 'constructor' },
  },
  [at('ask-first/page.tsx#default')]: aPage,
  [at('basic-fence/[itemId]/page.tsx#default')]: {
    ...aPage,
    names: { itemId: 's1' },
    namesNothing: { itemId: 'g1' },
  },
  [at('build-up/[itemId]/page.tsx#default')]: {
    ...aPage,
    names: { itemId: 's1' },
    namesNothing: { itemId: 'c1' },
  },
  [at('books/page.tsx#default')]: aPage,
  [at('books.csv/route.ts#GET')]: { answers: 'text/csv; charset=utf-8' },
  [at('build-ups/page.tsx#default')]: aPage,
  [at('changes/page.tsx#default')]: aPage,
  [at('closing/page.tsx#default')]: aPage,
  [at('dates/page.tsx#default')]: aPage,
  [at('first-split/page.tsx#default')]: aPage,
  [at('final-account/page.tsx#default')]: aPage,
  [at('final-account.pdf/route.ts#GET')]: {
    asks: '?number=1',
    asksNothing: '?number=01',
    answers: 'application/pdf',
  },
  [at('final-account.json/route.ts#GET')]: {
    asks: '?number=1',
    asksNothing: '?number=2',
    answers: 'application/json',
  },
  [at('item/[itemId]/page.tsx#default')]: {
    ...aPage,
    names: { itemId: 's1' },
    namesNothing: { itemId: 'constructor' },
  },
  [at('cut-plan/page.tsx#default')]: aPage,
  [at('answer/page.tsx#default')]: aPage,
  [at('letter/page.tsx#default')]: aPage,
  [at('letter.pdf/route.ts#GET')]: { answers: 'application/pdf' },
  [at('welcome/page.tsx#default')]: aPage,
  [at('line/page.tsx#default')]: aPage,
  [at('links/page.tsx#default')]: aPage,
  [at('materials/page.tsx#default')]: aPage,
  [at('measured/[itemId]/page.tsx#default')]: {
    ...aPage,
    names: { itemId: 's1' },
    namesNothing: { itemId: 'g1' },
  },
  [at('money/page.tsx#default')]: aPage,
  [at('needs/page.tsx#default')]: aPage,
  [at('paper/page.tsx#default')]: aPage,
  [at('parties/page.tsx#default')]: aPage,
  [at('pieces/page.tsx#default')]: aPage,
  [at('proposals/page.tsx#default')]: aPage,
  [at('proposals/new/page.tsx#default')]: aPage,
  [at('readers/page.tsx#default')]: aPage,
  [at('record/page.tsx#default')]: aPage,
  [at('setbacks/page.tsx#default')]: aPage,
  [at('shares/page.tsx#default')]: aPage,
  [at('side-by-side/page.tsx#default')]: aPage,
  [at('try/page.tsx#default')]: aPage,
  [at('side-by-side/[itemId]/page.tsx#default')]: {
    ...aPage,
    names: { itemId: 's1' },
    namesNothing: { itemId: 'constructor' },
  },
  [at('sign/page.tsx#default')]: aPage,
  [at('terms/page.tsx#default')]: aPage,
  [at('work/page.tsx#default')]: aPage,
  [at('materials.csv/route.ts#GET')]: { answers: 'text/csv; charset=utf-8' },
  [at('files/page.tsx#default')]: aPage,
  [at('files/[fileId]/route.ts#GET')]: { ...aFile, answers: 'image/jpeg' },
  [at('files/[fileId]/small/route.ts#GET')]: { ...aFile, answers: 'image/webp' },
  [at('dates.ics/route.ts#GET')]: { answers: 'text/calendar; charset=utf-8' },
  [at('sheet.pdf/route.ts#GET')]: {
    asks: '?for=permit&revision=1',
    asksNothing: '?for=constructor&revision=1',
    answers: 'application/pdf',
  },
  [at('history.json/route.ts#GET')]: { answers: 'application/json' },
  [at('record-pack.zip/route.ts#GET')]: { answers: 'application/zip' },
  [at('notebook.json/route.ts#GET')]: { answers: 'application/json' },
  [at('agreement.json/route.ts#GET')]: {
    asks: '?revision=1',
    asksNothing: '?revision=2',
    answers: 'application/json',
  },
  [at('ink.pdf/route.ts#GET')]: {
    asks: '?revision=1',
    asksNothing: '?revision=01',
    answers: 'application/pdf',
  },
  [at('summary.pdf/route.ts#GET')]: {
    asks: '?revision=1',
    asksNothing: '?revision=',
    answers: 'application/pdf',
  },
}

/** Where something is sent to: what households get for it is tested with what it does. */
const sentTo = [
  at('files/upload/route.ts#POST'),
  at('files/upload/route.ts#DELETE'),
  at('letter.pdf/route.ts#POST'),
  at('record-pack.zip/route.ts#POST'),
]

/** Stays open as long as its page: told in keptCurrent.test.ts. */
const keptOpen = [at('live/route.ts#GET')]

const forEveryone = ['app/page.tsx#default', 'app/start/page.tsx#default', 'app/check/page.tsx#default']
/** A file that is the same for everyone. */
const sameForEveryone = ['app/print-font/[face]/route.ts#GET']
/** Takes a file to be checked, from whoever is on the start page or on that of a record: told in longWork.test.ts. */
const checkedForEveryone = ['app/start/import/route.ts#POST', 'app/check/record/route.ts#POST']
const byToken = ['app/open/[token]/page.tsx#default']
/** Told address by address in readers.test.ts. */
const byReadersLink = readerThings.map((thing) => readerFile(thing))

async function ask(
  name: string,
  address: NotebookAddress,
  notebookId: string,
  nothing = false,
): Promise<Outcome> {
  const answer = (await everyAddress()).get(name) as AnyFunction
  const names = typeof address.names === 'function' ? address.names() : address.names
  const params = Promise.resolve({ notebookId, ...(nothing ? address.namesNothing : names) })
  const request = new Request(
    `http://localhost:3000/notebook/x${(nothing ? address.asksNothing : address.asks) ?? ''}`,
  )
  return outcomeOf(() => (address.answers === 'a page' ? answer({ params }) : answer(request, { params })))
}

function htmlOf(end: Outcome): string {
  if (end.kind !== 'answer') throw new Error(`No page: ${end.kind}`)
  return shownMarkup(end.answer as ReactNode)
}

test('the table names every page and every route handler, and no other', async () => {
  const named = [
    ...Object.keys(ofNotebooks),
    ...sentTo,
    ...keptOpen,
    ...forEveryone,
    ...sameForEveryone,
    ...checkedForEveryone,
    ...byToken,
    ...byReadersLink,
  ]
  expect([...(await everyAddress()).keys()].sort()).toEqual([...named].sort())
})

test('a notebook is opened anew for every request here, so that no answer is one that was kept from another role', async () => {
  const { notebook } = world()
  browseAs(world(), 'a')
  const first = await openNotebook(notebook.id)
  browseAs(world(), 'b')
  expect((await openNotebook(notebook.id)).household).toBe('b')
  expect(first.household).toBe('a')
})

describe.each(Object.entries(ofNotebooks))('%s', (name, address) => {
  test('is "not found" for every stranger and every unknown notebook, all alike', async () => {
    const before = await everyTable({ withDoor: true })
    const ends: Outcome[] = []
    for (const { who, asks } of strangers) {
      for (const nothing of [false, true]) {
        const end = await ask(name, address, asks(world()), nothing)
        expect([who, end.kind]).toEqual([who, 'not found'])
        ends.push(end)
      }
    }
    expect(ends.filter((end) => JSON.stringify(end) !== JSON.stringify(ends[0]))).toEqual([])
    expect(await everyTable({ withDoor: true })).toEqual(before)
  })

  test.each(['a', 'b'] as const)('answers household %s, and changes nothing', async (household) => {
    browseAs(world(), household)
    const before = await everyTable({ withDoor: true })
    const end = await ask(name, address, world().notebook.id)
    if (address.answers === 'a page') {
      expect(htmlOf(end)).toContain('<h1')
    } else {
      const response = (end as { answer: unknown }).answer as Response
      expect(response.status).toBe(200)
      expect(response.headers.get('content-type')).toBe(address.answers)
      expect(response.headers.get('cache-control')).toBe(
        address.shown ? 'private, no-cache' : 'private, no-store',
      )
      expect(response.headers.get('content-disposition')).toMatch(
        address.shown
          ? /^inline; filename="[a-z0-9-]+\.(jpg|webp)"$/
          : /^attachment; filename="[a-z0-9-]+\.(pdf|json|csv|ics|zip)"$/,
      )
      const { byteLength } = await response.arrayBuffer()
      expect(byteLength).toBeGreaterThan(0)
      expect(byteLength).toBe(Number(response.headers.get('content-length')))
    }
    expect(await everyTable({ withDoor: true })).toEqual(before)
  })

  if (address.namesNothing || address.asksNothing) {
    test('is "not found" for a household, too, where it names what is not there', async () => {
      browseAs(world(), 'b')
      expect((await ask(name, address, world().notebook.id, true)).kind).toBe('not found')
    })
  }
})

test.each(sentTo)(
  '%s is "not found" for every stranger, and reads nothing of what they send',
  async (name) => {
    const before = await everyTable({ withDoor: true })
    const ends: Outcome[] = []
    for (const { who, asks } of strangers) {
      const answer = (await everyAddress()).get(name) as AnyFunction
      const request = uploadRequest(asks(world()), await aPhoto())
      const params = Promise.resolve({ notebookId: new URL(request.url).pathname.split('/')[2] ?? '' })
      const end = await outcomeOf(() => answer(request, { params }))
      expect([who, end.kind, request.bodyUsed]).toEqual([who, 'not found', false])
      ends.push(end)
    }
    expect(ends.filter((end) => JSON.stringify(end) !== JSON.stringify(ends[0]))).toEqual([])
    expect(await everyTable({ withDoor: true })).toEqual(before)
  },
)

test('an item’s address that is no text once it is decoded leads nowhere', async () => {
  browseAs(world(), 'a')
  const name = at('item/[itemId]/page.tsx#default')
  for (const itemId of ['%E0%A4%A', '%', '..%2f..']) {
    expect((await ask(name, { ...aPage, names: { itemId } }, world().notebook.id)).kind).toBe('not found')
  }
  openBrowser()
  expect((await ask(name, { ...aPage, names: { itemId: '%E0%A4%A' } }, world().notebook.id)).kind).toBe(
    'not found',
  )
})

test.each(forEveryone)('%s is for everyone, and tells of no notebook', async (name) => {
  const titles = new Set<string>()
  for (const { asks } of strangers) {
    asks(world())
    const before = await everyTable({ withDoor: true })
    const page = (await everyAddress()).get(name) as AnyFunction
    titles.add(htmlOf(await outcomeOf(() => page({}))))
    expect(await everyTable({ withDoor: true })).toEqual(before)
  }
  expect(titles.size).toBe(1)
  for (const id of await everyId()) expect([...titles][0]).not.toContain(id)
})

test('the type of the papers is the same for everyone, and there is no other', async () => {
  const font = (await everyAddress()).get(sameForEveryone[0] ?? '') as AnyFunction
  const ask = (face: string) => outcomeOf(() => font({}, { params: Promise.resolve({ face }) }))
  for (const { asks } of strangers) {
    asks(world())
    const end = await ask('regular')
    expect(end.kind === 'answer' && (end.answer as Response).headers.get('content-type')).toBe('font/ttf')
    for (const face of ['italic', '../semibold', 'constructor'])
      expect((await ask(face)).kind).toBe('not found')
  }
})

describe('the page of a link', () => {
  const opened = async (token: string) => {
    const page = (await everyAddress()).get(byToken[0] ?? '') as AnyFunction
    return outcomeOf(() => page({ params: Promise.resolve({ token }) }))
  }

  test.each<[string, (world: World) => string, string]>([
    ['a link', ({ notebook }) => notebook.links.b, 'Come in as no. 14'],
    ['an unclaimed invitation', ({ waiting }) => waiting.invitation, 'The invitation works once'],
    ['a used invitation', ({ notebook }) => notebook.usedInvitation, 'This invitation has been used'],
  ])(
    'says what %s does, without doing it and without naming the notebook’s address',
    async (_which, tokenOf, said) => {
      const before = await everyTable({ withDoor: true })
      const html = htmlOf(await opened(tokenOf(world())))
      expect(html).toContain(said)
      for (const id of await everyId()) expect(html).not.toContain(id)
      expect(await everyTable({ withDoor: true })).toEqual(before)
    },
  )

  test('of a link that was replaced, an invitation that was ended, a session, and anything made up are "not found" alike', async () => {
    const { notebook, replaced } = world()
    const tokens = [
      replaced.link,
      notebook.revokedInvitation,
      notebook.sessions.a,
      notebook.id,
      'x'.repeat(43),
      '',
      '..',
      '%00',
    ]
    const before = await everyTable({ withDoor: true })
    const ends = await Promise.all(tokens.map(opened))
    expect(ends.map((end) => end.kind)).toEqual(tokens.map(() => 'not found'))
    expect(new Set(ends.map((end) => JSON.stringify(end))).size).toBe(1)
    expect(await everyTable({ withDoor: true })).toEqual(before)
  })
})

test.each(['a', 'b'] as const)(
  'no page shows household %s a key of anybody',
  async (household: Household) => {
    const { notebook, replaced } = world()
    const secrets = [
      ...Object.values(notebook.links),
      ...Object.values(notebook.sessions),
      notebook.usedInvitation,
      replaced.link,
    ]
    for (const [name, address] of Object.entries(ofNotebooks)) {
      if (address.answers !== 'a page') continue
      browseAs(world(), household)
      const html = htmlOf(await ask(name, address, notebook.id))
      expect([name, secrets.filter((secret) => html.includes(secret))]).toEqual([name, []])
    }
  },
)

async function everyId(): Promise<string[]> {
  const { notebook, other, waiting, example } = world()
  const ids = [notebook.id, other.id, waiting.id, example.id]
  for (const id of ids) expect(await findNotebook(id)).toBeDefined()
  return ids
}
