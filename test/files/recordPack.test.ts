import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { type PackEntry, recordPack } from '../../lib/files/recordPack.ts'
import { latinBytes } from './madePictures.ts'

let folder = ''
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'mearing-pack-'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

const at = new Date('2027-03-01T18:00:00Z')
const entry = (name: string, text: string, more: Partial<PackEntry> = {}): PackEntry => ({
  name,
  at,
  size: latinBytes(text).length,
  bytes: async () => latinBytes(text),
  ...more,
})

async function packed(entries: readonly PackEntry[]): Promise<Buffer> {
  return Buffer.from(await new Response(recordPack(entries).stream).arrayBuffer())
}

/** Names and contents of a zip, in its own order, as Python's zipfile reads them. */
function readByPython(zip: Buffer): [string, string][] {
  const file = join(folder, 'pack.zip')
  writeFileSync(file, zip)
  const program =
    'import json,sys,zipfile\nz=zipfile.ZipFile(sys.argv[1])\nassert z.testzip() is None\nprint(json.dumps([[i.filename,z.read(i).decode("latin1")] for i in z.infolist()]))'
  return JSON.parse(execFileSync('python3', ['-c', program, file], { encoding: 'utf8' }))
}

describe('a pack', () => {
  test('is read by Debian’s unzip and by Python, in the order in which it was given', async () => {
    const entries = [
      entry('read-me-first.txt', 'read me '.repeat(2000)),
      entry('files/before/001-gate.jpg', '\xff\xd8\xff'),
      entry('empty.txt', ''),
    ]
    const zip = await packed(entries)
    expect(readByPython(zip)).toEqual([
      ['read-me-first.txt', 'read me '.repeat(2000)],
      ['files/before/001-gate.jpg', '\xff\xd8\xff'],
      ['empty.txt', ''],
    ])
    expect(execFileSync('unzip', ['-tq', join(folder, 'pack.zip')], { encoding: 'utf8' })).toContain(
      'No errors detected',
    )
  })

  test('is the same bytes for the same content', async () => {
    const entries = [entry('a.txt', 'a'), entry('b/c.txt', 'c')]
    expect((await packed(entries)).equals(await packed(entries))).toBe(true)
  })

  test('asks for one file after the other, never for all at once', async () => {
    const asked: string[] = []
    let holding = 0
    const slow = (name: string) =>
      entry(name, name, {
        bytes: async () => {
          asked.push(name)
          holding += 1
          expect(holding).toBe(1)
          await new Promise((resolve) => setTimeout(resolve, 5))
          holding -= 1
          return latinBytes(name)
        },
      })
    await packed(['a.txt', 'b.txt', 'c.txt'].map(slow))
    expect(asked).toEqual(['a.txt', 'b.txt', 'c.txt'])
  })

  test('ends with an error, and as no whole zip, where a file can’t be had any more', async () => {
    const gone = entry('b.txt', '', { bytes: () => Promise.reject(new Error('gone')) })
    await expect(packed([entry('a.txt', 'a'), gone, entry('c.txt', 'c')])).rejects.toThrow('gone')
  })

  test('knows its size before its first byte', async () => {
    const entries = [entry('a.txt', 'a'.repeat(5000)), entry('b/c.jpg', '\xff\xd8'), entry('empty.txt', '')]
    expect((await packed(entries)).length).toBe(recordPack(entries).size)
  })

  test('ends with an error where a file has another size than was said', async () => {
    await expect(packed([entry('a.txt', 'abc', { size: 2 })])).rejects.toThrow()
  })

  test('reads nothing more once it is cancelled', async () => {
    const asked: string[] = []
    const large = 'x'.repeat(300_000)
    const noted = (name: string) =>
      entry(name, large, {
        bytes: async () => {
          asked.push(name)
          return latinBytes(large)
        },
      })
    const reader = recordPack(['a.txt', 'b.txt', 'c.txt', 'd.txt'].map(noted)).stream.getReader()
    expect((await reader.read()).done).toBe(false)
    await reader.cancel()
    const then = [...asked]
    // Whatever was going to be read would be by now: each reading above is a promise that is kept at once.
    for (let turn = 0; turn < 20; turn += 1) await new Promise((resolve) => setImmediate(resolve))
    expect(asked).toEqual(then)
    expect(asked).not.toContain('d.txt')
  })

  test.each([
    '/etc/passwd',
    '../up.txt',
    'a/../../up.txt',
    'a//b.txt',
    'C:\\x.txt',
    'a\\b.txt',
    '.hidden',
    'a/.hidden',
    'Ä.txt',
    'a b.txt',
    'a\n.txt',
    '',
  ])('takes no name that leads elsewhere or that some system refuses: %j', (name) => {
    expect(() => recordPack([entry(name, 'x')])).toThrow('No name for a file in a pack')
  })

  test('takes no name twice', () => {
    expect(() => recordPack([entry('a.txt', 'x'), entry('a.txt', 'y')])).toThrow('stands twice: a.txt')
  })
})
