import { appendFileSync, existsSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import sharp from 'sharp'
import { describe, expect, test, vi } from 'vitest'
import { GET as wholeFile } from '../../app/notebook/[notebookId]/files/[fileId]/route.ts'
import { GET as smallFile } from '../../app/notebook/[notebookId]/files/[fileId]/small/route.ts'
import { POST as upload } from '../../app/notebook/[notebookId]/files/upload/route.ts'
import { addFiles, takeAwayFile } from '../../app/notebook/server/storedFileActions.ts'
import { dataFolder } from '../../lib/store/dataFolder.ts'
import { filesOf, findFile, recordFile } from '../../lib/store/storedFiles.ts'
import { latinBytes, madePdf, madePixels } from '../files/madePictures.ts'
import { openBrowser } from './browser.ts'
import { everyTable, newRows } from './everyTable.ts'
import { anAddedPhoto, aPhoto, newestFile, ownHost, photoForm, uploadRequest } from './givenFiles.ts'
import { formOf } from './givenForms.ts'
import { outcomeOf, refusalOf } from './outcome.ts'
import { browseAs, sessionCookie, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()

const filesIn = () => join(dataFolder(), 'files')
const onDisk = (sha256: string) => join(filesIn(), sha256.slice(0, 2), sha256)

/** How many files lie under a hash, and how many are still being written. */
function counted(): { kept: number; arriving: number } {
  if (!existsSync(filesIn())) return { kept: 0, arriving: 0 }
  const all = readdirSync(filesIn(), { recursive: true, withFileTypes: true }).filter((one) => one.isFile())
  return {
    kept: all.filter(({ name }) => /^[0-9a-f]{64}$/.test(name)).length,
    arriving: all.filter(({ parentPath }) => parentPath.endsWith('arriving')).length,
  }
}

type Said = { readonly status: number; readonly added?: string; readonly refused?: string }

async function send(body: BodyInit, more: Parameters<typeof uploadRequest>[2] = {}): Promise<Said> {
  const { id } = world().notebook
  const response = await upload(uploadRequest(id, body, more), {
    params: Promise.resolve({ notebookId: id }),
  })
  expect(response.headers.get('cache-control')).toBe('private, no-store')
  return { status: response.status, ...(await response.json()) }
}

async function get(
  which: typeof wholeFile,
  fileId: string,
  { notebookId = world().notebook.id, search = '', headers = {} as Record<string, string> } = {},
): Promise<Response> {
  const request = new Request(`http://${ownHost}/x${search}`, { headers })
  return which(request, { params: Promise.resolve({ notebookId, fileId }) })
}

describe('a file that is sent', () => {
  test('is kept for its household, with what was said about it, and goes on record', async () => {
    browseAs(world(), 'b')
    const before = await everyTable()
    const about = {
      name: 'C:\\fakepath\\gate post.jpg',
      kind: 'before',
      caption: ' From \n the lane\u202e ',
      item: 's1',
    }
    expect(await send(await aPhoto(), { about })).toEqual({ status: 201, added: 'gate post.jpg' })
    const file = await newestFile(world().notebook.id)
    expect(file).toMatchObject({
      household: 'b',
      name: 'gate post.jpg',
      mediaType: 'image/jpeg',
      kind: 'before',
      caption: 'From the lane',
      itemKey: 'item:s1',
    })
    expect(counted()).toEqual({ kept: 1, arriving: 0 })
    expect(newRows(before, await everyTable(), 'Change')).toMatchObject([
      { kind: 'file', household: 'b', itemKey: 'item:s1', notebookId: world().notebook.id },
    ])
  })

  test('is what its content says, whatever it is called', async () => {
    browseAs(world(), 'a')
    await send(madePdf(), { about: { name: 'photo.jpg' } })
    expect((await newestFile(world().notebook.id)).mediaType).toBe('application/pdf')
    const answer = await get(wholeFile, (await newestFile(world().notebook.id)).id)
    expect(answer.headers.get('content-type')).toBe('application/pdf')
    expect(answer.headers.get('content-disposition')).toBe('attachment; filename="photo.pdf"')
  })

  test('loses its position on the way', async () => {
    browseAs(world(), 'a')
    const photo = await (await madePixels(40, 30))
      .withExif({ IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1' } })
      .jpeg()
      .toBuffer()
    expect((await sharp(photo).metadata()).exif?.length).toBeGreaterThan(0)
    expect((await send(photo)).status).toBe(201)
    const answer = await get(wholeFile, (await newestFile(world().notebook.id)).id)
    expect((await sharp(Buffer.from(await answer.arrayBuffer())).metadata()).exif).toBeUndefined()
  })

  test.each<
    [string, () => BodyInit | Promise<BodyInit>, Parameters<typeof uploadRequest>[2], number, RegExp]
  >([
    [
      'a HEIC photo',
      () => latinBytes('\0\0\0\x18ftypheic\0\0\0\0mif1heic'),
      {},
      422,
      /“most compatible”, or share the photo as a JPEG/,
    ],
    [
      'a page called a photo',
      () => '<script>alert(1)</script>',
      {},
      422,
      /It is a text file\. Print it to a PDF\./,
    ],
    ['half a photo', async () => (await aPhoto()).slice(0, 200), {}, 422, /can’t be read to its end/],
    ['a PDF with a program behind it', () => madePdf('<script>'), {}, 422, /something else hangs on it/],
    ['nothing', () => '', {}, 422, /There is nothing in it/],
    ['a photo of no kind', () => aPhoto(), { about: { kind: '' } }, 422, /Choose what it shows\./],
    [
      'a photo of a made-up kind',
      () => aPhoto(),
      { about: { kind: 'constructor' } },
      422,
      /Choose what it shows\./,
    ],
    [
      'a photo of an item that is not there',
      () => aPhoto(),
      { about: { item: 's99' } },
      422,
      /not in the notebook any more/,
    ],
    [
      'a photo of an item by its key',
      () => aPhoto(),
      { about: { item: 'item:s1' } },
      422,
      /not in the notebook any more/,
    ],
    [
      'a caption that is too long',
      () => aPhoto(),
      { about: { caption: 'x'.repeat(501) } },
      422,
      /500 characters at most/,
    ],
    ['a caption that is no text', () => aPhoto(), { about: { caption: { x: 1 } } }, 422, /could not be read/],
    [
      'no word about it',
      () => aPhoto(),
      { headers: { 'x-mearing-file': undefined } },
      422,
      /could not be read/,
    ],
    [
      'words about it that are no JSON',
      () => aPhoto(),
      { headers: { 'x-mearing-file': '%7B' } },
      422,
      /could not be read/,
    ],
    [
      'words about it that are a list',
      () => aPhoto(),
      { headers: { 'x-mearing-file': '[]' } },
      422,
      /could not be read/,
    ],
    [
      'words about it with a broken escape',
      () => aPhoto(),
      { headers: { 'x-mearing-file': '%E0%A4%A' } },
      422,
      /could not be read/,
    ],
    [
      'more than 20 MB, as announced',
      () => aPhoto(),
      { headers: { 'content-length': '20000001' } },
      413,
      /It has 20 MB\. A file can have 20 MB at most|20 MB at most/,
    ],
    ['more than 20 MB, unannounced', () => endless(), {}, 413, /It can have 20 MB at most/],
    [
      'a request of another site',
      () => aPhoto(),
      { headers: { origin: 'https://elsewhere.example' } },
      403,
      /Not sent from a page/,
    ],
    [
      'a request of another port',
      () => aPhoto(),
      { headers: { origin: 'http://mearing.example:3001' } },
      403,
      /Not sent from a page/,
    ],
    ['a request of no page', () => aPhoto(), { headers: { origin: 'null' } }, 403, /Not sent from a page/],
    [
      'a request without an origin',
      () => aPhoto(),
      { headers: { origin: undefined } },
      403,
      /Not sent from a page/,
    ],
  ])('is refused, and nothing is kept: %s', async (_what, body, more, status, reason) => {
    browseAs(world(), 'a')
    const before = await everyTable()
    const said = await send(await body(), more)
    expect(said).toEqual({ status, refused: expect.stringMatching(reason) })
    if (status !== 403) expect(said.refused).toMatch(/^“(gate post\.jpg|file)” was not added\. /)
    expect(await everyTable()).toEqual(before)
    expect(counted()).toEqual({ kept: 0, arriving: 0 })
  })

  test('behind a proxy is held against the host that the proxy was asked for', async () => {
    browseAs(world(), 'a')
    const proxied = { origin: 'https://fence.example', 'x-forwarded-host': 'fence.example' }
    expect((await send(await aPhoto(), { headers: proxied })).status).toBe(201)
  })

  test('twice is refused, unless it shows another thing; its bytes lie on disk once', async () => {
    browseAs(world(), 'a')
    expect((await send(await aPhoto())).status).toBe(201)
    expect(await send(await aPhoto())).toMatchObject({
      status: 422,
      refused: expect.stringContaining('here already'),
    })
    expect((await send(await aPhoto(), { about: { kind: 'after' } })).status).toBe(201)
    expect((await send(await aPhoto(), { about: { item: 's1' } })).status).toBe(201)
    expect(counted().kept).toBe(1)
    expect(await filesOf(world().notebook.id)).toHaveLength(3)
  })

  test('twice at the same moment is kept once', async () => {
    browseAs(world(), 'a')
    const photo = await aPhoto()
    const said = await Promise.all([1, 2, 3].map(() => send(photo)))
    expect(said.map(({ status }) => status).sort()).toEqual([201, 422, 422])
  })

  const anotherFile = async (index: number, size = 1) =>
    recordFile({
      notebookId: world().notebook.id,
      household: 'a',
      sha256: String(index).padStart(64, '0'),
      name: `${index}.jpg`,
      mediaType: 'image/jpeg',
      size,
      kind: 'other',
      caption: '',
      at: new Date('2027-03-02T18:00:00Z'),
    })

  test('is refused as the 201st, until one is taken away', async () => {
    browseAs(world(), 'a')
    const made: { readonly id: string }[] = []
    for (let index = 0; index < 200; index += 1) made.push(await anotherFile(index))
    expect(await send(await aPhoto())).toMatchObject({
      status: 422,
      refused: expect.stringContaining('200 files at most'),
    })
    await outcomeOf(() => takeAwayFile(world().notebook.id, {}, formOf({ id: made[0]?.id ?? '' })))
    expect((await send(await aPhoto())).status).toBe(201)
  })

  test('is refused beyond 500 MB in all, those taken away too, for they stay on disk', async () => {
    browseAs(world(), 'a')
    const large = await anotherFile(1, 499_999_999)
    expect(await send(await aPhoto())).toMatchObject({
      status: 422,
      refused: expect.stringContaining('500 MB in all'),
    })
    await outcomeOf(() => takeAwayFile(world().notebook.id, {}, formOf({ id: large.id })))
    expect(await send(await aPhoto())).toMatchObject({
      status: 422,
      refused: expect.stringContaining('500 MB in all'),
    })
    expect(counted().kept).toBe(0)
  })

  test('that the disk does not take is told so, and not on record', async () => {
    browseAs(world(), 'a')
    writeFileSync(filesIn(), 'a file where the folder should be')
    const before = await everyTable()
    expect(await send(await aPhoto())).toEqual({
      status: 507,
      refused: expect.stringContaining('Ask whoever runs the install'),
    })
    expect(await everyTable()).toEqual(before)
  })
})

function endless(): ReadableStream<Uint8Array> {
  return new ReadableStream({ pull: (controller) => controller.enqueue(new Uint8Array(1_000_000)) })
}

describe('files of a form sent without script', () => {
  test('are all kept, with one word about all', async () => {
    const { id } = world().notebook
    browseAs(world(), 'b')
    const form = await photoForm()
    form.append('file', new File([madePdf()], 'letter.pdf'))
    expect(await outcomeOf(() => addFiles(id, {}, form))).toEqual({
      kind: 'redirect',
      to: `/notebook/${id}/files`,
    })
    expect((await filesOf(id)).map(({ name, mediaType }) => [name, mediaType])).toEqual([
      ['gate post.jpg', 'image/jpeg'],
      ['letter.pdf', 'application/pdf'],
    ])
  })

  test('that are refused are each named, and the others are kept', async () => {
    const { id } = world().notebook
    browseAs(world(), 'b')
    const form = await photoForm()
    form.append('file', new File(['GIF89a'], 'dance.gif'))
    form.append('file', new File(['<svg/>'], 'drawing.svg'))
    const lines = refusalOf(await outcomeOf(() => addFiles(id, {}, form))).split('\n')
    expect(lines).toEqual([
      expect.stringMatching(/^“dance\.gif” was not added\. It is a GIF/),
      expect.stringMatching(/^“drawing\.svg” was not added\. It is an SVG/),
    ])
    expect(await filesOf(id)).toHaveLength(1)
  })
})

describe('a file is given out', () => {
  test('as it was kept, contained, and held by the browser only as long as it may be', async () => {
    browseAs(world(), 'a')
    const id = await anAddedPhoto(world().notebook.id)
    for (const [which, type] of [
      [wholeFile, 'image/jpeg'],
      [smallFile, 'image/webp'],
    ] as const) {
      const answer = await get(which, id)
      const told = Object.fromEntries(answer.headers)
      expect(told).toMatchObject({
        'content-type': type,
        'x-content-type-options': 'nosniff',
        'cache-control': 'private, no-cache',
        'content-security-policy': expect.stringMatching(/^default-src 'none';.*; sandbox$/),
      })
      const tag = told.etag ?? ''
      expect((await get(which, id, { headers: { 'if-none-match': tag } })).status).toBe(304)
      expect((await get(which, id, { headers: { 'if-none-match': `"x", W/${tag}` } })).status).toBe(304)
      expect((await get(which, id, { headers: { 'if-none-match': '"x"' } })).status).toBe(200)
    }
    const saved = await get(wholeFile, id, { search: '?save' })
    expect(saved.headers.get('content-disposition')).toBe('attachment; filename="gate-post.jpg"')
  })

  test('to no household of another notebook, by no address, also where the browser holds it', async () => {
    const { notebook, other } = world()
    browseAs(world(), 'a')
    const id = await anAddedPhoto(notebook.id)
    const etag = (await get(wholeFile, id)).headers.get('etag') ?? ''
    openBrowser({ [sessionCookie(other.id)]: other.sessions.a })
    for (const notebookId of [notebook.id, other.id])
      for (const which of [wholeFile, smallFile])
        for (const headers of [{}, { 'if-none-match': etag }])
          expect((await outcomeOf(() => get(which, id, { notebookId, headers }))).kind).toBe('not found')
    expect(await findFile(other.id, id)).toBeUndefined()
  })

  test.each(['', '..', '%00', '\0', "' OR 1=1", '__proto__', 'x'.repeat(100_000)])(
    'to nobody as %j',
    async (id) => {
      browseAs(world(), 'a')
      for (const which of [wholeFile, smallFile])
        expect((await outcomeOf(() => get(which, id))).kind).toBe('not found')
    },
  )

  test('never as other bytes than those that were kept', async () => {
    browseAs(world(), 'a')
    const id = await anAddedPhoto(world().notebook.id)
    const { sha256 } = await newestFile(world().notebook.id)
    appendFileSync(onDisk(sha256), 'x')
    for (const which of [wholeFile, smallFile]) {
      const altered = await get(which, id)
      expect(altered.status).toBe(500)
      expect(altered.headers.get('content-type')).toBe('text/plain; charset=utf-8')
      expect(await altered.text()).toContain('was changed on the disk after it was added')
    }
    rmSync(onDisk(sha256))
    const gone = await get(wholeFile, id)
    expect([gone.status, await gone.text()]).toEqual([
      410,
      expect.stringContaining('gone from the data folder'),
    ])
  })

  test('as a PDF never within a page, and never with a small picture', async () => {
    browseAs(world(), 'a')
    await send(madePdf())
    const { id } = await newestFile(world().notebook.id)
    const answer = await get(wholeFile, id)
    expect(answer.headers.get('content-disposition')).toMatch(/^attachment;/)
    expect(answer.headers.get('content-security-policy')).toContain('sandbox')
    expect(new Uint8Array(await answer.arrayBuffer())).toEqual(madePdf())
    expect((await outcomeOf(() => get(smallFile, id))).kind).toBe('not found')
  })
})

describe('taking a file away', () => {
  test('is for the household that added it; it is shown no more and stays on record and on disk', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const fileId = await anAddedPhoto(id)
    browseAs(world(), 'b')
    const before = await everyTable()
    const form = () => formOf({ id: fileId })
    expect(refusalOf(await outcomeOf(() => takeAwayFile(id, {}, form())))).toContain(
      'Only the household that added',
    )
    expect(await everyTable()).toEqual(before)

    browseAs(world(), 'a')
    expect((await outcomeOf(() => takeAwayFile(id, {}, form()))).kind).toBe('redirect')
    expect(await filesOf(id)).toEqual([])
    expect(await filesOf(id, true)).toMatchObject([{ id: fileId, removedBy: 'a' }])
    expect(counted().kept).toBe(1)
    for (const which of [wholeFile, smallFile])
      expect((await outcomeOf(() => get(which, fileId))).kind).toBe('not found')
    expect(refusalOf(await outcomeOf(() => takeAwayFile(id, {}, form())))).toContain('not there any more')
    expect((await send(await aPhoto())).status).toBe(201)
  })

  test('reaches no file of another notebook', async () => {
    const { notebook, other } = world()
    const fileId = await anAddedPhoto(other.id)
    browseAs(world(), 'a')
    expect(refusalOf(await outcomeOf(() => takeAwayFile(notebook.id, {}, formOf({ id: fileId }))))).toContain(
      'not there any more',
    )
    expect(await filesOf(other.id)).toHaveLength(1)
  })
})
