import type { ReactNode } from 'react'
import { beforeEach, describe, expect, test, vi } from 'vitest'
import { makeReadersLink } from '../../app/notebook/server/readerActions.ts'
import { openByLink } from '../../app/open/[token]/actions.ts'
import { type ReaderThing, readerHolds, readerThings } from '../../lib/access/readerAccess.ts'
import { agreementText } from '../../lib/core/agreement/canonicalText.ts'
import { type ReadNotebook, readNotebook } from '../../lib/forms/readNotebook.ts'
import { sayBesideItem } from '../../lib/store/messages.ts'
import { createNotebook, editNotebook } from '../../lib/store/notebooks.ts'
import { newToken } from '../../lib/store/randomToken.ts'
import {
  makeReaderLink,
  readerContents,
  readerLinksOf,
  revokeReaderLink,
} from '../../lib/store/readerLinks.ts'
import { freezeRevision, signRevision } from '../../lib/store/revisions.ts'
import { keepSealedPaper } from '../../lib/store/sealedPapers.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'
import { openedWords } from '../../lib/words/readerText.ts'
import { costlyDocument, costlyWords } from '../pdf/costlyNotebook.ts'
import { readPdf, wordsOf } from '../pdf/readPdf.ts'
import { shownMarkup } from '../shownMarkup.ts'
import { keptCookies, openBrowser, setCookieHeaders } from './browser.ts'
import { everyTable, newRows } from './everyTable.ts'
import { readersLink, tomorrow } from './givenForms.ts'
import { faultsOf, type Outcome, outcomeOf } from './outcome.ts'
import { readerFile } from './readerFiles.ts'
import { type AnyFunction, everyAddress } from './serverFiles.ts'
import { browseAs, sessionCookie, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
// Forms ask the router where they are, which only Next can say; nothing here is pressed.
vi.mock('next/navigation', async (original) => ({
  ...(await original<object>()),
  useRouter: () => ({}),
  usePathname: () => '/',
}))

const world = worldForEachTest()
const at = new Date('2027-03-01T18:00:00Z')

/** Words that stand nowhere but in what the two households said to each other. */
const said = ['wintergreen', 'squabble'] as const
/** A word that stands in the draft alone: it was typed after all had signed. */
const draftAlone = 'afterthought'

/** A notebook that has something to hide of every kind: signed by all and locked, then changed and talked about. */
async function secretive(signed = true, locked = true): Promise<string> {
  const document = { format: 'mearing-notebook', version: 1, currency: 'USD', ...costlyDocument() }
  const { id } = await createNotebook({ document: JSON.stringify(document), example: false, at })
  if (signed) await signedByAll(id, document, locked)
  await editNotebook({
    id,
    household: 'a',
    at,
    change: (stored) => {
      const before = JSON.parse(stored) as typeof document & { decisions: object[] }
      const decisions = [...before.decisions, { on: '2027-03-01', text: `An ${draftAlone}.` }]
      return {
        document: JSON.stringify({ ...before, decisions }),
        changed: [{ itemKey: 'terms', before: null, after: `An ${draftAlone}.` }],
        kept: undefined,
      }
    },
  })
  for (const text of said) {
    await sayBesideItem({ notebookId: id, itemKey: 'line', household: 'b', kind: 'objection', text, at })
  }
  return id
}

const lockedBytes = new TextEncoder().encode('%PDF-1.7 locked')

async function signedByAll(id: string, document: object, locked: boolean): Promise<void> {
  const read = readNotebook(JSON.stringify(document)) as { ok: true; value: ReadNotebook }
  const text = agreementText(read.value.document)
  const sha256 = sha256Hex(text)
  const frozen = await freezeRevision({
    id,
    household: 'a',
    at,
    build: () => ({ canonicalText: text, sha256 }),
  })
  if ('refused' in frozen) throw new Error('nothing stands in the way')
  for (const household of ['a', 'b'] as const) {
    const name = read.value.notebook.households[household].parties[0]?.name ?? ''
    await signRevision({
      notebookId: id,
      revisionId: frozen.revision.id,
      sha256,
      household,
      partyIndex: 0,
      partyName: name,
      capacity: 'owner',
      typedName: name,
      intent: 'I sign.',
      drawing: 'M0 0L9 9',
      at,
    })
  }
  if (!locked) return
  await keepSealedPaper({
    notebookId: id,
    revisionId: frozen.revision.id,
    household: 'a',
    bytes: lockedBytes,
    certificate: sha256Hex('certificate'),
    history: { entry: 0, hash: '0'.repeat(64) },
    at,
  })
}

async function opened(thing: ReaderThing, token: string): Promise<Outcome> {
  const answer = (await everyAddress()).get(readerFile(thing)) as AnyFunction
  const params = Promise.resolve({ token })
  return outcomeOf(() =>
    thing.includes('.')
      ? answer(new Request(`http://localhost:3000/read/x/${thing}`), { params })
      : answer({ params }),
  )
}

/** Everything that can be read in an answer: a page's HTML; a file's bytes, a PDF's words and all that is attached to it. */
async function textOf(end: Outcome): Promise<string> {
  if (end.kind !== 'answer') throw new Error(`No answer: ${end.kind}`)
  if (!(end.answer instanceof Response)) {
    return shownMarkup(end.answer as ReactNode).replaceAll(geometry, '')
  }
  const bytes = new Uint8Array(await end.answer.arrayBuffer())
  const raw = Buffer.from(bytes).toString('latin1')
  if (end.answer.headers.get('content-type') !== 'application/pdf' || raw.includes('locked')) return raw
  const { pages, attachments } = await readPdf(bytes)
  return [wordsOf(...pages), ...[...attachments.values()].map((one) => new TextDecoder().decode(one))].join(
    '\n',
  )
}

/** Where a drawing's lines run is told in figures of another kind. */
const geometry =
  / (?:d|points|[xyr]|[xy][12]|[cr][xy]|width|height|viewBox|transform|font-size|textLength|stroke-[a-z]+)="[^"]*"/g
const hashes = /\b[0-9a-f]{64}\b/g
const found = (text: string, words: readonly string[]) => {
  // A hash is a figure of another kind, and may hold any digits.
  const plain = text.replaceAll('\u00A0', ' ').replaceAll(hashes, '')
  return words.filter((word) => plain.includes(word))
}

const everyPlace = readerContents.flatMap((content) => readerThings.map((thing) => [content, thing] as const))

describe('what a reader’s link opens', { timeout: 120_000 }, () => {
  test('is said of every address under /read', async () => {
    const named = [...(await everyAddress()).keys()].filter((name) => name.startsWith('app/read/'))
    expect(named.sort()).toEqual(readerThings.map(readerFile).sort())
  })

  test.each(everyPlace)('a link to %s, at %s: what it holds and nothing else', async (content, thing) => {
    const id = await secretive()
    const token = await readersLink(id, content)
    const before = await everyTable()
    const end = await opened(thing, token)
    const after = await everyTable()
    expect(setCookieHeaders()).toEqual([])
    if (!readerHolds(content, thing)) {
      expect(end.kind).toBe('not found')
      expect(after).toEqual(before)
      return
    }
    expect(newRows(before, after, 'ReaderVisit')).toMatchObject([{ what: thing }])
    expect({ ...after, ReaderVisit: [] }).toEqual({ ...before, ReaderVisit: [] })
    if (end.kind === 'answer' && end.answer instanceof Response) {
      expect(end.answer.headers.get('cache-control')).toBe('private, no-store')
      expect(end.answer.headers.get('referrer-policy')).toBe('no-referrer')
      expect(end.answer.headers.get('x-robots-tag')).toContain('noindex')
    }
    const text = await textOf(end)
    expect(text.length).toBeGreaterThan(10)
    expect(found(text, [id])).toEqual([])
    if (content === 'summary') expect(found(text, costlyWords)).toEqual([])
    if (content !== 'everything') expect(found(text, [...said, draftAlone])).toEqual([])
  })

  test('what is left out of the one is in the other, so that the search for it can find it', async () => {
    const id = await secretive()
    const [costs, everything] = [await readersLink(id, 'costs'), await readersLink(id, 'everything')]
    expect(
      found(await textOf(await opened('page', costs)), ['quondam pipe', 'lathering', '71,114.83']),
    ).toHaveLength(3)
    expect(found(await textOf(await opened('summary.pdf', costs)), ['quondam', '71.91'])).toHaveLength(2)
    expect(found(await textOf(await opened('history', everything)), said)).toHaveLength(2)
    expect(found(await textOf(await opened('history.json', everything)), said)).toHaveLength(2)
    expect(found(await textOf(await opened('notebook.json', everything)), [draftAlone])).toHaveLength(1)
    expect(await textOf(await opened('locked-copy.pdf', costs))).toBe(new TextDecoder().decode(lockedBytes))
  })

  test('holds for a draft: only a link to everything shows one, and every other says that nothing is signed', async () => {
    const id = await secretive(false)
    for (const content of readerContents) {
      const token = await readersLink(id, content)
      const text = await textOf(await opened('page', token))
      const shows = ['Weir', 'Sluice', 'quondam', draftAlone]
      expect([content, found(text, shows).length]).toEqual([content, content === 'everything' ? 4 : 0])
      expect(text).toContain('Nothing has been signed yet')
      const paper = await opened('summary.pdf', token)
      expect(paper.kind).toBe(content === 'everything' ? 'answer' : 'not found')
      expect((await opened('locked-copy.pdf', token)).kind).toBe('not found')
      expect((await opened('agreement.json', token)).kind).toBe('not found')
    }
  })

  test('makes no locked copy: while one is not made yet, neither it nor the pack that would make it is there', async () => {
    const id = await secretive(true, false)
    const token = await readersLink(id, 'everything')
    await opened('page', token)
    const before = await everyTable()
    expect((await opened('locked-copy.pdf', token)).kind).toBe('not found')
    expect((await opened('record-pack.zip', token)).kind).toBe('not found')
    expect(await textOf(await opened('page', token))).not.toContain('record-pack.zip')
    const after = await everyTable()
    expect({ ...after, ReaderVisit: [] }).toEqual({ ...before, ReaderVisit: [] })
  })

  test('is one notebook, and no other', async () => {
    const [one, other] = [await secretive(), world().notebook.id]
    const text = await textOf(await opened('page', await readersLink(other, 'everything')))
    expect(found(text, ['Weir', 'Sluice', one])).toEqual([])
    expect(text).toContain('The line between no. 12 and no. 14')
  })

  test('is logged once where a browser asks for it twice, as for the head first', async () => {
    const id = await secretive()
    const token = await readersLink(id)
    for (let times = 0; times < 3; times += 1) await opened('page', token)
    await opened('summary.pdf', token)
    const [link] = await readerLinksOf(id)
    expect(link?.visits.map(({ what }) => what)).toEqual(['summary.pdf', 'page'])
  })

  test('says for whom it is and until when', async () => {
    const id = await secretive()
    const { token } = await makeReaderLink({
      notebookId: id,
      household: 'b',
      content: 'summary',
      label: 'the permit office',
      expiresAt: new Date('2099-05-01T00:00:00Z'),
      at,
    })
    const text = await textOf(await opened('page', token))
    for (const words of [
      'the permit office',
      '30 April 2099, world time',
      'Revision 1, signed by every party',
    ])
      expect(text).toContain(words)
  })
})

describe('a link that opens nothing', () => {
  test.each(readerThings)(
    'is "not found" at %s like whatever never was, and touches nothing',
    async (thing) => {
      const { notebook } = world()
      const id = notebook.id
      const made = { notebookId: id, household: 'a', content: 'everything', label: 'x', at } as const
      const { token: over } = await makeReaderLink({ ...made, expiresAt: new Date(Date.now() - 1000) })
      const { token: ended } = await makeReaderLink({ ...made, expiresAt: new Date(Date.now() + 1e9) })
      const [newest] = (await readerLinksOf(id)).filter(({ expiresAt }) => expiresAt > new Date())
      await revokeReaderLink({ notebookId: id, id: newest?.id ?? '', household: 'b', at })
      const tokens: Record<string, string> = {
        unknown: newToken(),
        expired: over,
        ended,
        'a household’s link': notebook.links.a,
        'a household’s session': notebook.sessions.b,
        'an invitation': notebook.usedInvitation,
        'a notebook’s id': id,
        'a link’s id': newest?.id ?? '',
        empty: '',
        'no token': '../notebook',
      }
      const before = await everyTable({ withDoor: true })
      const ends: string[] = []
      for (const [which, token] of Object.entries(tokens)) {
        // A browser that a household let in gets no further here.
        browseAs(world(), 'a')
        const end = await opened(thing, token)
        expect([which, end.kind]).toEqual([which, 'not found'])
        ends.push(JSON.stringify(end))
      }
      expect(new Set(ends).size).toBe(1)
      expect(await everyTable({ withDoor: true })).toEqual(before)
      expect(setCookieHeaders()).toEqual([])
    },
  )

  test('a reader’s link is no household’s: it opens none of its pages and lets no browser in', async () => {
    const { id } = world().notebook
    const token = await readersLink(id, 'everything')
    openBrowser({ [sessionCookie(id)]: token })
    const before = await everyTable({ withDoor: true })
    const params = { notebookId: id, itemId: 's1', kind: 'gate', fileId: '0'.repeat(36) }
    const request = new Request('http://localhost:3000/notebook/x?revision=1')
    for (const [name, answer] of await everyAddress()) {
      if (!name.startsWith('app/notebook/')) continue
      const given = { params: Promise.resolve(params) }
      const end = await outcomeOf(() =>
        name.includes('/route.ts#') ? answer(request, given) : answer(given),
      )
      expect([name, end.kind]).toEqual([name, 'not found'])
    }
    expect((await outcomeOf(() => openByLink(token, {}, new FormData()))).kind).toBe('not found')
    expect(Object.keys(keptCookies())).toEqual([sessionCookie(id)])
    expect(await everyTable({ withDoor: true })).toEqual(before)
  })
})

describe('making a link', () => {
  const good = () => ({ label: 'the permit office', content: 'summary', through: tomorrow() })
  const make = (draft: object) => {
    browseAs(world(), 'b')
    return outcomeOf(() => makeReadersLink(world().notebook.id, 'new', draft))
  }

  test('gives an address that opens, through the day that was chosen', async () => {
    const end = await make(good())
    const { address } = (end as { answer: { address: string } }).answer
    expect(address).toMatch(/^http:\/\/[^/]+\/read\/[A-Za-z0-9_-]{43}$/)
    expect((await opened('page', address.slice(-43))).kind).toBe('answer')
    const [link] = await readerLinksOf(world().notebook.id)
    expect(link?.expiresAt.toISOString().slice(10)).toBe('T00:00:00.000Z')
    expect(new Date((link?.expiresAt.getTime() ?? 0) - 1).toISOString().slice(0, 10)).toBe(tomorrow())
    expect(link?.createdBy).toBe('b')
  })

  test.each<[string, object, Record<string, string>]>([
    ['without a word for whom', { label: ' \u0000 ' }, { label: 'Needed: for whom' }],
    ['with a name too long', { label: 'x'.repeat(201) }, { label: 'At most 200 characters; this has 201' }],
    ['of no such content', { content: 'constructor' }, { content: 'Needed' }],
    ['through no day', { through: '2027-02-30' }, { through: 'Needed: a day' }],
    ['through a day that is over', { through: '2020-01-01' }, { through: 'This day is over' }],
    ['for longer than five years', { through: '2999-01-01' }, { through: 'At most five years' }],
    ['with a moment for a day', { through: '2027-04-30T00:00' }, { through: 'Needed: a day' }],
  ])('is refused %s, at its field, and makes none', async (_how, wrong, expected) => {
    const before = await everyTable()
    const faults = faultsOf(await make({ ...good(), ...wrong }))
    expect(Object.keys(faults)).toEqual(Object.keys(expected))
    for (const [path, words] of Object.entries(expected)) expect(faults[path]).toContain(words)
    expect(await everyTable()).toEqual(before)
  })
})

beforeEach(() => openBrowser())

test('the log of a link has a word for everything that a link opens', () => {
  expect(Object.keys(openedWords).sort()).toEqual([...readerThings].sort())
})
