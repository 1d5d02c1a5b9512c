import { beforeEach, describe, expect, test } from 'vitest'
import { database } from '../../lib/store/database.ts'
import { historyOf } from '../../lib/store/historyChain.ts'
import { createNotebook } from '../../lib/store/notebooks.ts'
import {
  makeReaderLink,
  openByReaderLink,
  type ReaderContent,
  readerLinksOf,
  revokeReaderLink,
} from '../../lib/store/readerLinks.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'
import { filesOf, findFile, recordFile, takeFileAway } from '../../lib/store/storedFiles.ts'
import { temporaryDatabaseForEachTest } from './temporaryDatabase.ts'

temporaryDatabaseForEachTest()

const at = new Date('2025-06-01T18:00:00Z')
const expiresAt = new Date('2025-07-01T00:00:00Z')
let id: string

beforeEach(async () => {
  id = (await createNotebook({ document: '{}', example: false, at })).id
})

function make(content: ReaderContent = 'summary') {
  return makeReaderLink({ notebookId: id, household: 'a', content, label: 'permit office', expiresAt, at })
}

function open(token: string, when = at, holds: (content: ReaderContent) => boolean = () => true) {
  return openByReaderLink({ token, what: 'page', holds, at: when })
}

describe('a reader’s link', () => {
  test('opens what it holds, and each opening is logged', async () => {
    const { token } = await make('costs')
    expect((await open(token))?.content).toBe('costs')
    await open(token, new Date('2025-06-02T08:00:00Z'))
    const [link] = await readerLinksOf(id)
    expect(link?.visits.map((visit) => visit.at.toISOString())).toEqual([
      '2025-06-02T08:00:00.000Z',
      '2025-06-01T18:00:00.000Z',
    ])
  })

  test('opened again within a minute is one opening, also where the clock was set back a little', async () => {
    const { token } = await make()
    for (const seconds of [0, 20, 59, 60, 61, 30]) await open(token, new Date(at.getTime() + seconds * 1000))
    await openByReaderLink({ token, what: 'summary.pdf', holds: () => true, at })
    await open(token, new Date('2025-05-01T00:00:00Z'))
    const [link] = await readerLinksOf(id)
    expect(link?.visits.map((visit) => `${visit.what} ${visit.at.toISOString()}`)).toEqual([
      'page 2025-05-01T00:00:00.000Z',
      'summary.pdf 2025-06-01T18:00:00.000Z',
      'page 2025-06-01T18:01:00.000Z',
      'page 2025-06-01T18:00:00.000Z',
    ])
  })

  test('tells all of its openings, and shows the newest', async () => {
    const { token } = await make()
    for (const minute of [0, 2, 4, 6]) await open(token, new Date(at.getTime() + minute * 60_000))
    const [link] = await readerLinksOf(id, 2)
    expect(link?.openings).toBe(4)
    expect(link?.visits.map((visit) => visit.at.toISOString().slice(14, 16))).toEqual(['06', '04'])
  })

  test('stands before those that were made earlier, in the same moment too', async () => {
    const labels = Array.from({ length: 12 }, (_, count) => `reader ${count}`)
    for (const label of labels) {
      await makeReaderLink({ notebookId: id, household: 'a', content: 'summary', label, expiresAt, at })
    }
    expect((await readerLinksOf(id)).map((link) => link.label)).toEqual(labels.toReversed())
  })

  test('opens nothing that it does not hold, and nothing is logged then', async () => {
    const { token } = await make()
    expect(await open(token, at, (content) => content === 'everything')).toBeUndefined()
    expect((await readerLinksOf(id))[0]?.visits).toEqual([])
  })

  test('opens nothing from the moment on at which it expires', async () => {
    const { token } = await make()
    expect(await open(token, new Date(expiresAt.getTime() - 1))).toBeDefined()
    expect(await open(token, expiresAt)).toBeUndefined()
  })

  test('is ended by either household, once, and opens nothing then', async () => {
    const { token } = await make()
    const [link] = await readerLinksOf(id)
    const ending = { notebookId: id, id: link?.id ?? '', household: 'b', at } as const
    expect(await revokeReaderLink(ending)).toBe(true)
    expect(await revokeReaderLink(ending)).toBe(false)
    expect(await open(token)).toBeUndefined()
  })

  test('of another notebook is not ended', async () => {
    await make()
    const [link] = await readerLinksOf(id)
    const other = await createNotebook({ document: '{}', example: false, at })
    expect(await revokeReaderLink({ notebookId: other.id, id: link?.id ?? '', household: 'a', at })).toBe(
      false,
    )
    expect((await readerLinksOf(id))[0]?.revokedAt).toBeUndefined()
  })

  test('is stored as a hash only, and goes on record without its token', async () => {
    const { token } = await make()
    const rows = await database().read((tables) => tables.readerLink.findMany())
    expect(rows[0]?.tokenHash).toBe(sha256Hex(token))
    expect(JSON.stringify([rows, await historyOf(id)])).not.toContain(token)
    expect((await historyOf(id)).map(({ kind }) => kind)).toEqual(['reader'])
  })

  test.each(['', 'short', 'A'.repeat(43), `${'A'.repeat(42)}=`])('%j opens nothing', async (token) => {
    await make()
    expect(await open(token)).toBeUndefined()
  })
})

describe('a file on record', () => {
  const photo = {
    household: 'b',
    sha256: sha256Hex('photo'),
    name: 'old fence.jpg',
    mediaType: 'image/jpeg',
    size: 5,
    kind: 'before',
    caption: 'From the lane',
  } as const

  test('is found with its item, and on record', async () => {
    const { id: file } = await recordFile({ notebookId: id, ...photo, itemKey: 'item:s1', at })
    expect(await filesOf(id)).toEqual([{ id: file, ...photo, itemKey: 'item:s1', addedAt: at }])
    expect((await historyOf(id)).map(({ kind, itemKey }) => [kind, itemKey])).toEqual([['file', 'item:s1']])
  })

  test('taken away is shown no more and stays on record', async () => {
    const { id: file } = await recordFile({ notebookId: id, ...photo, at })
    expect(await takeFileAway({ notebookId: id, id: file, household: 'a', at })).toBe(true)
    expect(await takeFileAway({ notebookId: id, id: file, household: 'a', at })).toBe(false)
    expect(await filesOf(id)).toEqual([])
    expect(await findFile(id, file)).toBeUndefined()
    expect((await filesOf(id, true)).map(({ removedBy }) => removedBy)).toEqual(['a'])
  })

  test('stands after those that were added before it, in the same moment too', async () => {
    const names = Array.from({ length: 12 }, (_, count) => `photo ${count}.jpg`)
    for (const name of names) await recordFile({ notebookId: id, ...photo, name, at })
    expect((await filesOf(id)).map((file) => file.name)).toEqual(names)
  })

  test('is found by its own notebook alone', async () => {
    const { id: file } = await recordFile({ notebookId: id, ...photo, at })
    const other = await createNotebook({ document: '{}', example: false, at })
    expect(await findFile(other.id, file)).toBeUndefined()
    expect(await takeFileAway({ notebookId: other.id, id: file, household: 'a', at })).toBe(false)
    expect((await findFile(id, file))?.name).toBe('old fence.jpg')
  })
})
