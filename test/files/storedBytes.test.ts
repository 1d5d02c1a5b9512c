import { type ChildProcess, spawn } from 'node:child_process'
import { createHash } from 'node:crypto'
import {
  appendFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import {
  type Disk,
  keepBytes,
  readBytes,
  sizeOnDisk,
  sweepDrafts,
  theDisk,
} from '../../lib/files/storedBytes.ts'
import { latinBytes } from './madePictures.ts'

let folder = ''
beforeEach(() => {
  folder = join(mkdtempSync(join(tmpdir(), 'mearing-bytes-')), 'files')
})
afterEach(() => rmSync(join(folder, '..'), { recursive: true, force: true }))

const bytes = latinBytes('what the line looked like')
const sha256 = createHash('sha256').update(bytes).digest('hex')
const path = () => join(folder, sha256.slice(0, 2), sha256)
const drafts = () => readdirSync(join(folder, 'arriving'))

/** Everything in the folder of files, by its path. */
function everything(): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
}

describe('bytes are kept', () => {
  test('under their hash, for nobody else to read, and given out again', async () => {
    expect(await keepBytes(folder, bytes)).toEqual({ kind: 'kept', sha256 })
    expect(everything()).toEqual([path()])
    expect(readFileSync(path())).toEqual(Buffer.from(bytes))
    expect(statSync(path()).mode & 0o777).toBe(0o600)
    expect(await readBytes(folder, sha256)).toEqual({ bytes: Buffer.from(bytes) })
    expect(await sizeOnDisk(folder, sha256)).toBe(bytes.length)
  })

  test('once, however often they come and how many at once', async () => {
    await keepBytes(folder, bytes)
    const before = statSync(path())
    const again = await Promise.all([1, 2, 3].map(() => keepBytes(folder, bytes)))
    expect(again).toEqual([1, 2, 3].map(() => ({ kind: 'kept', sha256 })))
    expect(statSync(path()).ino).toBe(before.ino)
    expect(everything()).toEqual([path()])
  })

  test('anew where they were altered meanwhile', async () => {
    await keepBytes(folder, bytes)
    appendFileSync(path(), 'x')
    expect(await keepBytes(folder, bytes)).toEqual({ kind: 'kept', sha256 })
    expect(await readBytes(folder, sha256)).toEqual({ bytes: Buffer.from(bytes) })
  })
})

describe('what is not as it was kept is noticed', () => {
  test.each<[string, () => void, string]>([
    ['gone', () => rmSync(path()), 'missing'],
    ['one byte changed', () => writeFileSync(path(), Buffer.from(bytes).fill('X', 3, 4)), 'altered'],
    ['cut short', () => writeFileSync(path(), bytes.slice(0, -1)), 'altered'],
    ['empty', () => writeFileSync(path(), ''), 'altered'],
    [
      'a folder in its place',
      () => {
        rmSync(path())
        mkdirSync(path())
      },
      'unreadable',
    ],
  ])('%s', async (_what, spoil, damage) => {
    await keepBytes(folder, bytes)
    spoil()
    expect(await readBytes(folder, sha256)).toEqual({ damage })
  })

  test.each(['', '..', '../../etc/passwd', sha256.toUpperCase(), `${sha256}/x`])(
    '%j leads nowhere',
    async (odd) => {
      expect(await readBytes(folder, odd)).toEqual({ damage: 'missing' })
    },
  )
})

describe('a full disk', () => {
  const failing = (code: string): Disk => ({
    ...theDisk,
    // Half of it is on disk when there is no more room, as a real disk does it.
    write: async (file, all) => {
      await file.writeFile(all.subarray(0, 10))
      throw Object.assign(new Error(code), { code })
    },
  })

  test.each(['ENOSPC', 'EDQUOT'])('leaves nothing half-written and says so: %s', async (code) => {
    expect(await keepBytes(folder, bytes, failing(code))).toEqual({ kind: 'disk-full' })
    expect(everything()).toEqual([])
    expect(await readBytes(folder, sha256)).toEqual({ damage: 'missing' })
    expect(await keepBytes(folder, bytes)).toEqual({ kind: 'kept', sha256 })
  })

  test('any other failure leaves nothing either', async () => {
    expect(await keepBytes(folder, bytes, failing('EIO'))).toEqual({ kind: 'not-written', detail: 'EIO' })
    expect(everything()).toEqual([])
  })

  test('that is nearly full is not filled to its end, for the database needs room, too', async () => {
    const nearly = { ...theDisk, free: async () => 64_000_000 + bytes.length - 1 }
    expect(await keepBytes(folder, bytes, nearly)).toEqual({ kind: 'disk-full' })
    expect(everything()).toEqual([])
    const enough = { ...theDisk, free: async () => 64_000_000 + bytes.length }
    expect(await keepBytes(folder, bytes, enough)).toEqual({ kind: 'kept', sha256 })
  })

  test('spares what was there before', async () => {
    await keepBytes(folder, bytes)
    await keepBytes(folder, latinBytes('another'), failing('ENOSPC'))
    expect(await readBytes(folder, sha256)).toEqual({ bytes: Buffer.from(bytes) })
    expect(everything()).toEqual([path()])
  })

  test('a data folder that is a file is said, not thrown', async () => {
    writeFileSync(folder, '')
    expect((await keepBytes(folder, bytes)).kind).toBe('not-written')
  })
})

describe('a process that is killed in the middle of writing', () => {
  test('leaves a draft and nothing under any hash; a later start sweeps it', async () => {
    await keepBytes(folder, bytes)
    const child = await writingChild()
    child.kill('SIGKILL')
    await new Promise((resolve) => child.once('exit', resolve))
    expect(drafts()).toHaveLength(1)
    expect(everything()).toHaveLength(2)
    const half = latinBytes('half of it, and then the power went')
    expect(await readBytes(folder, createHash('sha256').update(half).digest('hex'))).toEqual({
      damage: 'missing',
    })

    expect(await sweepDrafts(folder, new Date(Date.now() + 1000))).toBe(1)
    expect(everything()).toEqual([path()])
    expect(await keepBytes(folder, half)).toMatchObject({ kind: 'kept' })
  })

  test('what is being written since the start is left alone', async () => {
    await keepBytes(folder, bytes)
    const [old, young] = ['old', 'young'].map((name) => join(folder, 'arriving', name))
    writeFileSync(old ?? '', 'x')
    writeFileSync(young ?? '', 'x')
    const start = new Date()
    utimesSync(old ?? '', start, new Date(start.getTime() - 60_000))
    utimesSync(young ?? '', start, new Date(start.getTime() + 1000))
    expect(await sweepDrafts(folder, start)).toBe(1)
    expect(existsSync(young ?? '')).toBe(true)
  })

  test('there is nothing to sweep where nothing was ever kept', async () => {
    expect(await sweepDrafts(folder, new Date())).toBe(0)
  })
})

/** A process that has written half a file and hangs there. */
async function writingChild(): Promise<ChildProcess> {
  const script = join(import.meta.dirname, 'processes/hangWhileWriting.ts')
  const child = spawn(process.execPath, ['--import', 'tsx', script, folder], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  await new Promise<void>((resolve, reject) => {
    child.stdout?.once('data', () => resolve())
    child.once('exit', (code) => reject(new Error(`The process ended with ${code} before it was killed.`)))
  })
  return child
}
