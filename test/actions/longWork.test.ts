import { existsSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test, vi } from 'vitest'
import { checkedRecord } from '../../app/check/checkedRecord.ts'
import { POST as checkRecord } from '../../app/check/record/route.ts'
import { DELETE as stopUpload, POST as upload } from '../../app/notebook/[notebookId]/files/upload/route.ts'
import { GET as getPack, POST as makePack } from '../../app/notebook/[notebookId]/record-pack.zip/route.ts'
import { replaceByFile } from '../../app/notebook/server/fileActions.ts'
import { addFile } from '../../app/notebook/server/storedFileAdding.ts'
import { startFromFile } from '../../app/start/actions.ts'
import { POST as sendImport } from '../../app/start/import/route.ts'
import { oneAtATime } from '../../lib/files/oneAtATime.ts'
import { exampleDocument } from '../../lib/forms/exampleNotebook.ts'
import { documentText } from '../../lib/forms/parts.ts'
import type * as papers from '../../lib/pdf/summaryPaper.ts'
import { dataFolder } from '../../lib/store/dataFolder.ts'
import { filesOf } from '../../lib/store/storedFiles.ts'
import { checkRefusals } from '../../lib/words/workText.ts'
import { madePdf } from '../files/madePictures.ts'
import { openBrowser } from './browser.ts'
import { everyTable } from './everyTable.ts'
import { anAddedPhoto, aPhoto, ownHost, uploadRequest } from './givenFiles.ts'
import { formOf, formWithFile } from './givenForms.ts'
import { outcomeOf, refusalOf } from './outcome.ts'
import { browseAs, strangers, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const made = vi.hoisted(() => ({ papers: 0 }))
vi.mock('../../lib/pdf/summaryPaper.ts', async (actual) => {
  const { summaryPaper, ...rest } = await actual<typeof papers>()
  const counted: typeof summaryPaper = (...given) => {
    made.papers += 1
    return summaryPaper(...given)
  }
  return { ...rest, summaryPaper: counted }
})
const world = worldForEachTest()

const own = { host: ownHost, origin: `http://${ownHost}` }
const notebookParams = () => ({ params: Promise.resolve({ notebookId: world().notebook.id }) })
const text = documentText(exampleDocument())

/** Every line of an answer that tells how it goes. */
async function linesOf(response: Response): Promise<Record<string, unknown>[]> {
  const all = await response.text()
  expect(all === '' || all.endsWith('\n')).toBe(true)
  return all
    .split('\n')
    .slice(0, -1)
    .map((line) => JSON.parse(line))
}

function bytesOnDisk(): string[] {
  const folder = join(dataFolder(), 'files')
  return existsSync(folder)
    ? readdirSync(folder, { recursive: true, withFileTypes: true })
        .filter((one) => one.isFile())
        .map(({ name }) => name)
    : []
}

describe('a file on its way', () => {
  const sendAs = (sending: string, body: BodyInit, signal?: AbortSignal) =>
    upload(
      new Request(uploadRequest(world().notebook.id, body, { about: { sending } }), signal && { signal }),
      notebookParams(),
    )
  const stop = (sending: string, headers: Record<string, string> = own) =>
    stopUpload(
      new Request(`http://${ownHost}/x?sending=${sending}`, { method: 'DELETE', headers }),
      notebookParams(),
    )
  /** Holds up the queue in which files are added, until it is told to go on. */
  function heldUp() {
    let goOn = () => {}
    const waits = new Promise<void>((resolve) => {
      goOn = resolve
    })
    void oneAtATime(() => waits)
    return goOn
  }
  const aMoment = () => new Promise((resolve) => setTimeout(resolve, 20))

  test('that breaks off in the middle leaves nothing, on record or on disk', async () => {
    browseAs(world(), 'a')
    const before = await everyTable()
    const photo = await aPhoto()
    const half = new ReadableStream<Uint8Array>({
      start: (controller) => controller.enqueue(photo.slice(0, 300)),
      pull: () => Promise.reject(new Error('the line was cut')),
    })
    const response = await sendAs('one', half)
    expect(response.status).toBe(422)
    expect((await response.json()).refused).toContain('The connection broke off before all of it was here.')
    expect(await everyTable()).toEqual(before)
    expect(bytesOnDisk()).toEqual([])
  })

  test.each(['by a press', 'by going away'])(
    'that is all here and waits to be looked through can still be stopped %s, and leaves nothing',
    async (how) => {
      browseAs(world(), 'a')
      const before = await everyTable()
      const goOn = heldUp()
      const away = new AbortController()
      const sending = sendAs('one', await aPhoto(), away.signal)
      await aMoment()
      if (how === 'by a press') expect((await stop('one')).status).toBe(204)
      else away.abort()
      goOn()
      const response = await sending
      expect([response.status, await response.json()]).toEqual([409, { stopped: true }])
      expect(await everyTable()).toEqual(before)
      expect(bytesOnDisk()).toEqual([])
    },
  )

  test('is not stopped by a press about another, by the other household, or from another site', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const goOn = heldUp()
    const sending = sendAs('one', await aPhoto())
    await aMoment()
    await stop('other')
    expect((await stop('one', { ...own, origin: 'https://elsewhere.example' })).status).toBe(403)
    browseAs(world(), 'b')
    expect((await stop('one')).status).toBe(204)
    goOn()
    expect((await sending).status).toBe(201)
    expect(await filesOf(id)).toHaveLength(1)
  })

  test('is stopped by a press that was quicker than its last byte', async () => {
    browseAs(world(), 'a')
    const before = await everyTable()
    await stop('early')
    expect((await sendAs('early', await aPhoto())).status).toBe(409)
    expect(await everyTable()).toEqual(before)
  })

  test('is stopped early however many others the other household names', async () => {
    browseAs(world(), 'b')
    for (let one = 0; one < 300; one += 1) await stop(`never-${one}`)
    browseAs(world(), 'a')
    await stop('early')
    expect((await sendAs('early', await aPhoto())).status).toBe(409)
  })

  test('that was kept before the press came says that it was added', async () => {
    browseAs(world(), 'a')
    expect((await sendAs('one', await aPhoto())).status).toBe(201)
    const before = await everyTable()
    expect((await stop('one')).status).toBe(204)
    expect(await everyTable()).toEqual(before)
  })
})

describe('a notebook file on its way', () => {
  const send = (body: BodyInit | null, headers: Record<string, string> = own, signal?: AbortSignal) =>
    sendImport(
      new Request(`http://${ownHost}/start/import`, {
        method: 'POST',
        body,
        headers,
        duplex: 'half',
        ...(signal ? { signal } : {}),
      } as RequestInit),
    )
  const heldToken = async () => String((await linesOf(await send(text))).at(-1)?.held)

  test('is read and checked, stores nothing, and is stored by the press after it, as from a form', async () => {
    openBrowser()
    const before = await everyTable({ withDoor: true })
    const lines = await linesOf(await send(text))
    expect(lines).toEqual([
      { stage: 'reading' },
      { stage: 'checking' },
      { held: expect.stringMatching(/^[0-9a-f]{64}$/) },
    ])
    expect(await everyTable({ withDoor: true })).toEqual(before)
    const end = await outcomeOf(() => startFromFile({}, formOf({ held: String(lines[2]?.held) })))
    expect(end).toMatchObject({ kind: 'redirect', to: expect.stringMatching(/\/links$/) })
    expect((await everyTable()).Notebook?.length).toBe((before.Notebook?.length ?? 0) + 1)
  })

  test('takes the place of a notebook by the press after it', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const other = documentText({ ...exampleDocument(), title: 'Another fence' })
    const held = String((await linesOf(await send(other))).at(-1)?.held)
    expect(await outcomeOf(() => replaceByFile(id, {}, formOf({ held })))).toEqual({
      kind: 'redirect',
      to: `/notebook/${id}/record`,
    })
    expect(JSON.stringify(await everyTable())).toContain('Another fence')
  })

  test.each<[string, () => BodyInit | null, string | RegExp]>([
    ['is empty', () => null, /no file was chosen, or it is empty/],
    ['is no notebook file', () => '{"format":"other"}', /^[a-z(].*: /],
    ['holds a length that is none', () => text.replace('"0 ft"', '"0 fathoms"'), /: .*fathoms|: .*length/],
    ['has more than 2 MB', () => `${text}${' '.repeat(2_000_000)}`, /at most 2000000 are taken/],
  ])('is refused where it %s, with what is wrong, and stores nothing', async (_what, body, refused) => {
    const before = await everyTable({ withDoor: true })
    const lines = await linesOf(await send(body()))
    expect(lines.at(-1)).toEqual({ refused: expect.stringMatching(refused) })
    expect(await everyTable({ withDoor: true })).toEqual(before)
  })

  test('that is stopped while it is read leaves no notebook, and nothing to make one from', async () => {
    openBrowser()
    const before = await everyTable({ withDoor: true })
    const away = new AbortController()
    const response = await send(text, own, away.signal)
    away.abort()
    const lines = await linesOf(response)
    expect(lines.filter((line) => 'held' in line || 'broke' in line)).toEqual([])
    expect(await everyTable({ withDoor: true })).toEqual(before)
  })

  test('takes the notebook’s place although strangers sent many: what was held stays, what was not goes along', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const held = await heldToken()
    const others: unknown[] = []
    for (let one = 0; one < 25; one += 1) others.push((await linesOf(await send(text))).at(-1)?.held)
    expect(others.at(-1)).toBeNull()
    const title = { ...exampleDocument(), title: 'Another fence' }
    for (const form of [formOf({ held }), formWithFile(documentText(title))])
      expect(await outcomeOf(() => replaceByFile(id, {}, form))).toMatchObject({ kind: 'redirect' })
    expect(JSON.stringify(await everyTable())).toContain('Another fence')
  })

  test('that breaks off in the middle is never read', async () => {
    const half = new ReadableStream<Uint8Array>({
      start: (controller) => controller.enqueue(new TextEncoder().encode(text.slice(0, 500))),
      pull: () => Promise.reject(new Error('the line was cut')),
    })
    const lines = await linesOf(await send(half))
    expect(lines.filter((line) => !('refused' in line))).toEqual([])
  })

  test.each(['', 'x', '0'.repeat(64), '__proto__'])(
    'is not found under %j, and nothing is stored',
    async (held) => {
      browseAs(world(), 'a')
      await heldToken()
      const before = await everyTable({ withDoor: true })
      for (const act of [
        () => startFromFile({}, formOf({ held })),
        () => replaceByFile(world().notebook.id, {}, formOf({ held })),
      ])
        expect(refusalOf(await outcomeOf(act))).toContain('Send it once more.')
      expect(await everyTable({ withDoor: true })).toEqual(before)
    },
  )

  test('is not taken from a page of another site', async () => {
    expect((await send(text, { ...own, origin: 'https://elsewhere.example' })).status).toBe(403)
  })
})

describe('a record pack that is made ready', () => {
  const make = (signal?: AbortSignal, headers: Record<string, string> = own) =>
    makePack(
      new Request(`http://${ownHost}/x`, { method: 'POST', headers, ...(signal ? { signal } : {}) }),
      notebookParams(),
    )
  const get = (ready: string) => getPack(new Request(`http://${ownHost}/x?ready=${ready}`), notebookParams())
  const bytesOf = async (response: Response) => Buffer.from(await response.arrayBuffer())

  test('tells how many papers and files are ready of how many, and is then given out as it was made', async () => {
    browseAs(world(), 'a')
    await anAddedPhoto(world().notebook.id)
    const lines = await linesOf(await make())
    expect(lines).toEqual([
      { ready: 1, all: 2 },
      { ready: 2, all: 2 },
      { token: expect.stringMatching(/^[0-9a-f]{64}$/), bytes: expect.any(Number) },
    ])
    const papersMade = made.papers
    const first = await get(String(lines[2]?.token))
    expect(first.headers.get('content-length')).toMatch(/^[1-9][0-9]+$/)
    const pack = await bytesOf(first)
    expect(pack.length).toBe(Number(first.headers.get('content-length')))
    expect((await bytesOf(await get(String(lines[2]?.token)))).equals(pack)).toBe(true)
    expect(made.papers).toBe(papersMade)
  })

  test('is the household’s own: whoever else names it gets one made anew, or is not let in', async () => {
    browseAs(world(), 'a')
    const token = String((await linesOf(await make())).at(-1)?.token)
    const before = made.papers
    browseAs(world(), 'b')
    expect((await get(token)).status).toBe(200)
    expect(made.papers).toBe(before + 1)
    for (const { asks } of strangers) {
      const params = Promise.resolve({ notebookId: asks(world()) })
      const request = new Request(`http://${ownHost}/x?ready=${token}`)
      expect((await outcomeOf(() => getPack(request, { params }))).kind).toBe('not found')
    }
  })

  test.each(['the request ends', 'nobody reads on'])(
    'is made no further once it is stopped: %s',
    async (how) => {
      browseAs(world(), 'a')
      for (const kind of ['before', 'after', 'survey', 'permit', 'receipt', 'other']) {
        const asker = { notebookId: world().notebook.id, household: 'a' } as const
        await addFile(asker, { name: 'p.jpg', kind, caption: '', item: '' }, await aPhoto())
      }
      const before = await everyTable()
      const away = new AbortController()
      const response = await make(away.signal)
      const reader = response.body?.getReader()
      const told: string[] = []
      const readOn = async () => {
        const next = await reader?.read()
        if (next?.value) told.push(new TextDecoder().decode(next.value).trim())
        return next?.done === false
      }
      await readOn()
      if (how === 'the request ends') away.abort()
      else await reader?.cancel()
      while (await readOn()) expect(told.length).toBeLessThan(7)
      expect(told[0]).toBe('{"ready":1,"all":7}')
      expect(told.join()).not.toMatch(/token|broke|"ready":7/)
      expect(await everyTable()).toEqual(before)
    },
  )

  test('is made for no page of another site', async () => {
    browseAs(world(), 'a')
    expect((await make(undefined, { ...own, origin: 'https://elsewhere.example' })).status).toBe(403)
  })
})

describe('a record on its way to be checked', () => {
  const check = (body: BodyInit | null, headers: Record<string, string> = own, signal?: AbortSignal) =>
    checkRecord(
      new Request(`http://${ownHost}/check/record`, {
        method: 'POST',
        body,
        headers,
        duplex: 'half',
        ...(signal ? { signal } : {}),
      } as RequestInit),
    )

  test.each<[string, () => BodyInit | null, object]>([
    ['that is no locked copy', () => madePdf(), { holds: false, lines: expect.any(Array) }],
    ['that is empty', () => null, { refused: expect.stringContaining('choose a PDF file first') }],
    ['of more than 20 MB', () => new Uint8Array(20_000_001), { holds: false, lines: expect.any(Array) }],
  ])('%s is answered as the page shows it, and nothing is kept', async (_what, body, answer) => {
    const before = await everyTable({ withDoor: true })
    expect(await linesOf(await check(body()))).toEqual([{ answer: expect.objectContaining(answer) }])
    expect(await everyTable({ withDoor: true })).toEqual(before)
    expect(bytesOnDisk()).toEqual([])
  })

  test('is not looked through any more once it is stopped, and makes room for the next', async () => {
    for (let turn = 0; turn < 10; turn += 1) {
      const away = new AbortController()
      const response = await check(madePdf(), own, away.signal)
      away.abort()
      expect((await linesOf(response)).filter((line) => 'broke' in line)).toEqual([])
    }
    const [line] = await linesOf(await check(madePdf()))
    expect(line?.answer).toMatchObject({ holds: false })
  })

  test('is not begun while four others wait or are looked through, and is a moment later', async () => {
    let letGo = () => {}
    const held = new Promise<Uint8Array>((resolve) => {
      letGo = () => resolve(new Uint8Array(madePdf()))
    })
    const others = Array.from({ length: 4 }, () => checkedRecord('', 1, () => held))
    const bytes = async () => new Uint8Array(madePdf())
    expect(await checkedRecord('', 1, bytes)).toEqual({ refused: checkRefusals.busy })
    letGo()
    for (const answer of await Promise.all(others)) expect(answer).toMatchObject({ holds: false })
    expect(await checkedRecord('', 1, bytes)).toMatchObject({ holds: false })
  })

  test('is not taken from a page of another site', async () => {
    expect((await check(madePdf(), { ...own, origin: 'https://elsewhere.example' })).status).toBe(403)
  })
})
