import { execFileSync } from 'node:child_process'
import { appendFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { GET as historyFile } from '../../app/notebook/[notebookId]/history.json/route.ts'
import { GET as recordPack } from '../../app/notebook/[notebookId]/record-pack.zip/route.ts'
import { saveNotebookPart } from '../../app/notebook/server/actions.ts'
import { putUpForSigning, signForParty } from '../../app/notebook/server/signActions.ts'
import { takeAwayFile } from '../../app/notebook/server/storedFileActions.ts'
import { addFile } from '../../app/notebook/server/storedFileAdding.ts'
import { database } from '../../lib/store/database.ts'
import { dataFolder } from '../../lib/store/dataFolder.ts'
import { findNotebook } from '../../lib/store/notebooks.ts'
import { newestRevision, revisionsOf } from '../../lib/store/revisions.ts'
import { sealedPaperOf } from '../../lib/store/sealedPapers.ts'
import { filesOf } from '../../lib/store/storedFiles.ts'
import { madePdf } from '../files/madePictures.ts'
import { writtenLetter } from '../words/letter/writtenLetter.ts'
import { aPhoto } from './givenFiles.ts'
import { formOf, openedPart, signingPlace } from './givenForms.ts'
import { outcomeOf } from './outcome.ts'
import { browseAs, markEverything, worldForEachTest } from './world.ts'

vi.mock('next/headers', () => import('./browser.ts'))
const world = worldForEachTest()

let folder = ''
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'mearing-handed-over-'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

async function asked(route: typeof recordPack): Promise<Buffer> {
  const { id } = world().notebook
  const response = await route(new Request('http://localhost/'), {
    params: Promise.resolve({ notebookId: id }),
  })
  return Buffer.from(await response.arrayBuffer())
}

/** Unpacks a record pack as its receiver would, with Debian's unzip; gives its names in their order. */
async function unpacked(): Promise<string[]> {
  const zip = join(folder, 'pack.zip')
  writeFileSync(zip, await asked(recordPack))
  execFileSync('unzip', ['-tq', zip])
  const into = join(folder, 'pack')
  rmSync(into, { recursive: true, force: true })
  mkdirSync(into)
  execFileSync('unzip', ['-q', zip, '-d', into])
  const program = 'import json,sys,zipfile;print(json.dumps(zipfile.ZipFile(sys.argv[1]).namelist()))'
  return JSON.parse(execFileSync('python3', ['-c', program, zip], { encoding: 'utf8' }))
}
const part = (name: string) => readFileSync(join(folder, 'pack', name))
const text = (name: string) => part(name).toString('utf8')
const flat = (name: string) => text(name).replace(/\s+/g, ' ')

async function signedByAll(): Promise<void> {
  const { id } = world().notebook
  await markEverything(id)
  browseAs(world(), 'a')
  await outcomeOf(() => putUpForSigning(id, {}, new FormData()))
  const place = await signingPlace(id)
  const parties = { a: ['Marnie Oakshott', 'Tobias Oakshott'], b: ['Ines Vandermolen'] }
  for (const household of ['a', 'b'] as const) {
    browseAs(world(), household)
    for (const [partyIndex, typedName] of parties[household].entries()) {
      const draft = { typedName, intent: true, drawing: '' }
      expect((await outcomeOf(() => signForParty(id, { ...place, partyIndex }, '', draft))).kind).toBe(
        'redirect',
      )
    }
  }
}

async function add(name: string, kind: string, bytes: Uint8Array, caption = ''): Promise<void> {
  const { id } = world().notebook
  const added = await addFile({ notebookId: id, household: 'a' }, { name, kind, caption, item: 's1' }, bytes)
  expect(added.refused).toBeUndefined()
}

/**
 * Works the chain of an exported history out again, by another program: Python's json writes what is in a history (texts,
 * whole numbers, keys of plain letters) as RFC 8785 does when it sorts keys and leaves out blanks. Says whether it holds.
 */
function chainHolds(file: string): boolean {
  const program = `
import hashlib, json, sys
history = json.load(open(sys.argv[1], encoding='utf-8'))
before = '0' * 64
for number, entry in enumerate(history['entries'], 1):
    told = entry.pop('hash')
    text = json.dumps(entry, sort_keys=True, separators=(',', ':'), ensure_ascii=False)
    if entry['number'] != number or entry['previous'] != before: sys.exit(1)
    if hashlib.sha256(text.encode('utf-8')).hexdigest() != told: sys.exit(1)
    before = told
newest = history['newest']
sys.exit(0 if newest == {'entry': len(history['entries']), 'hash': before} else 1)`
  try {
    execFileSync('python3', ['-c', program, file])
    return true
  } catch {
    return false
  }
}

describe('a record pack', () => {
  test('holds the first letter as it stands, and says that it is not known to be what was sent', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const letter = { part: 'letter' } as const
    const { base } = await openedPart(id, letter)
    expect(await saveNotebookPart(id, letter, base, { letter: writtenLetter })).toHaveProperty('saved')
    const names = await unpacked()
    expect(names).toContain('letter/first-letter.txt')
    expect(flat('read-me-first.txt')).toContain('letter/first-letter.txt: the first letter')
    const told = flat('letter/first-letter.txt')
    expect(told).toMatch(
      /^This is the first letter .* as it stands in the notebook now.*Whether and when it was sent, and in what words, is not on record here\./,
    )
    expect(told).toContain('Three posts are rotten.')
    expect(told).toContain('The invitation that went with this letter is not printed on this copy.')
    for (const line of text('letter/first-letter.txt').split('\n'))
      expect(line.length).toBeLessThanOrEqual(78)
  })

  test('holds what was signed and sealed, the notebook, the history and the files, in one order', async () => {
    const { id } = world().notebook
    await signedByAll()
    browseAs(world(), 'b')
    const caps = { part: 'caps' } as const
    await saveNotebookPart(id, caps, (await openedPart(id, caps)).base, { caps: { b: '9000.00' } })
    await markEverything(id)
    await outcomeOf(() => putUpForSigning(id, {}, new FormData()))
    await add('../../etc/gate post.jpg', 'before', await aPhoto(), 'The gate, ½ open')
    await add('letter.pdf', 'permit', madePdf())
    await add('letter.pdf', 'permit', madePdf('', 'another'))

    const names = await unpacked()
    expect(names).toEqual([
      'read-me-first.txt',
      'summaries/revision-1-locked.pdf',
      'agreements/revision-1.json',
      'agreements/revision-2.json',
      'summaries/draft.pdf',
      'notebook.json',
      'history.json',
      'files/before/001-gate-post.jpg',
      'files/permit/001-letter.pdf',
      'files/permit/002-letter.pdf',
      'sha256sums.txt',
    ])
    const [second, first] = await revisionsOf(id)
    const sealed = await sealedPaperOf(first?.id ?? '')
    expect(part('summaries/revision-1-locked.pdf').equals(Buffer.from(sealed?.bytes ?? []))).toBe(true)
    expect(text('agreements/revision-1.json')).toBe(first?.canonicalText)
    expect(text('agreements/revision-2.json')).toBe(second?.canonicalText)
    expect(text('notebook.json')).toBe((await findNotebook(id))?.document)
    expect(part('summaries/draft.pdf').toString('latin1', 0, 5)).toBe('%PDF-')
    expect(new Uint8Array(part('files/permit/002-letter.pdf'))).toEqual(madePdf('', 'another'))

    // As the text in it says to do it.
    const checked = execFileSync('sha256sum', ['-c', 'sha256sums.txt'], {
      cwd: join(folder, 'pack'),
      encoding: 'utf8',
    })
    expect(checked.trim().split('\n')).toEqual(names.slice(0, -1).map((name) => `${name}: OK`))
    expect(chainHolds(join(folder, 'pack/history.json'))).toBe(true)

    const told = flat('read-me-first.txt')
    for (const name of names.filter((one) => one !== 'read-me-first.txt')) expect(told).toContain(name)
    expect(told).toContain('Revision 1: signed by all. The summary is the locked copy, as it was sealed.')
    expect(told).toContain('Revision 2: put up for signing, not signed by all.')
    expect(told).toContain(first?.sha256)
    expect(told).toContain('Before the work, Lane to the gardens: The gate, ½ open')
  })

  test('holds no file of another notebook, none that was taken away, and tells of what is missing', async () => {
    const { notebook, other } = world()
    browseAs(world(), 'a')
    await addFile(
      { notebookId: other.id, household: 'a' },
      { name: 'theirs.pdf', kind: 'survey', caption: '', item: '' },
      madePdf('', 'theirs'),
    )
    await add('kept.jpg', 'before', await aPhoto())
    await add('taken away.pdf', 'survey', madePdf())
    await add('spoilt.pdf', 'receipt', madePdf('', 'spoilt'))
    const files = await filesOf(notebook.id)
    await outcomeOf(() => takeAwayFile(notebook.id, {}, formOf({ id: files[1]?.id ?? '' })))
    const sha256 = files[2]?.sha256 ?? ''
    appendFileSync(join(dataFolder(), 'files', sha256.slice(0, 2), sha256), 'x')

    const names = await unpacked()
    expect(names.filter((name) => name.startsWith('files/'))).toEqual(['files/before/001-kept.jpg'])
    const told = flat('read-me-first.txt')
    expect(told).toContain('These are on record, but they could not be put in: “spoilt.pdf”')
    expect(told).toContain('was changed on the disk after it was added')
    expect(told).toContain(sha256)
    expect(told).not.toContain('theirs.pdf')
    // That it was there once is on record.
    expect(text('history.json')).toContain('taken away.pdf')
    expect(text('history.json')).not.toContain('theirs.pdf')
    expect(told).toContain('There is no locked copy here yet.')
  })

  test('says of a locked copy that was altered in the database that it is not there', async () => {
    await signedByAll()
    const revision = await newestRevision(world().notebook.id)
    await database().write(async (tables) => {
      // Whoever has the file of the database can do what its triggers refuse.
      await tables.$executeRaw`DROP TRIGGER "SealedPaper_never_altered"`
      await tables.sealedPaper.update({
        where: { revisionId: revision?.id ?? '' },
        data: { bytes: new Uint8Array([1, 2, 3]) },
      })
    })
    expect((await unpacked()).filter((name) => name.startsWith('summaries/'))).toEqual([
      'summaries/draft.pdf',
    ])
    expect(flat('read-me-first.txt')).toContain(
      'Its locked copy was changed in the database, so it is not here.',
    )
  })
})

describe('an exported history', () => {
  test('can be worked out again by another program, and not once it was altered', async () => {
    const { id } = world().notebook
    browseAs(world(), 'a')
    const line = { part: 'line' } as const
    const { draft, base } = await openedPart<{ line: object }>(id, line)
    await saveNotebookPart(id, line, base, { line: { ...draft.line, start: 'iron pin, found ½ “deep”\n塀' } })
    await add('gate.jpg', 'after', await aPhoto())
    const whole = (await asked(historyFile)).toString('utf8')
    const file = join(folder, 'history.json')
    const holds = (content: string) => {
      writeFileSync(file, content)
      return chainHolds(file)
    }
    expect(holds(whole)).toBe(true)

    const history = JSON.parse(whole)
    expect(history).toMatchObject({ format: 'mearing-history', version: 1 })
    expect(history.entries.length).toBeGreaterThan(2)
    expect(history.entries.at(-1)).toMatchObject({
      kind: 'file',
      household: 'a',
      detail: { name: 'gate.jpg' },
    })
    type Entry = Record<string, unknown>
    const spoilings: readonly ((entries: Entry[]) => Entry[])[] = [
      (entries) => entries.slice(1),
      (entries) => entries.slice(0, -1),
      (entries) => entries.toSpliced(1, 1),
      (entries) => entries.with(0, { ...entries[0], household: 'b' }),
      (entries) => entries.with(-1, { ...entries.at(-1), at: '2020-01-01T00:00:00.000Z' }),
      (entries) => [...entries, { ...entries.at(-1), number: entries.length + 1 }],
    ]
    for (const spoil of spoilings)
      expect(holds(JSON.stringify({ ...history, entries: spoil(history.entries) }))).toBe(false)
  })
})
