import { execFile } from 'node:child_process'
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { promisify } from 'node:util'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { type SealKeyResult, sealKey } from '../../lib/seal/sealKey.ts'
import { sealKeyText } from '../../lib/words/sealKeyText.ts'
import { madeAt } from './madeRecord.ts'

let folder: string
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'mearing-key-'))
})
afterEach(() => rmSync(folder, { recursive: true }))

const keyFile = () => path.join(folder, 'seal-key.pem')
const noteFile = () => path.join(folder, 'seal-key.known')

function fingerprintOf(result: SealKeyResult): string {
  if (!result.ok) throw new Error(JSON.stringify(result.fault))
  return result.value.fingerprint
}

function faultOf(result: SealKeyResult): string {
  if (result.ok) throw new Error('a key was given out')
  // Each fault has a sentence that says what to do.
  expect(sealKeyText(result.fault)).toMatch(/backup|chmod|data folder|let the program|clock/i)
  return result.fault.kind
}

/** The text with one character of a line of base64 exchanged. */
function changedInLine(text: string, line: number): string {
  const lines = text.split('\n')
  const changed = (lines[line] ?? '').replace(
    /^(.{9})(.)/,
    (_, start, one) => `${start}${one === 'Q' ? 'R' : 'Q'}`,
  )
  expect(changed).not.toBe(lines[line])
  return lines.with(line, changed).join('\n')
}

describe('the seal of an install', () => {
  test('is made at first need, readable by its owner alone, and stays the same', async () => {
    const first = await sealKey(folder, madeAt)
    const again = await sealKey(folder, new Date('2040-01-01T00:00:00Z'))
    expect(fingerprintOf(again)).toBe(fingerprintOf(first))
    expect(statSync(keyFile()).mode & 0o777).toBe(0o600)
    expect(readFileSync(noteFile(), 'utf8')).toBe(`${fingerprintOf(first)}\n`)
    expect(readdirSync(folder).sort()).toEqual(['seal-key.known', 'seal-key.pem'])
  })

  test('keeps its mode whatever the umask is', async () => {
    const before = process.umask(0)
    try {
      await sealKey(folder, madeAt)
    } finally {
      process.umask(before)
    }
    expect(statSync(keyFile()).mode & 0o777).toBe(0o600)
  })

  test('is one and the same for processes that start at once', async () => {
    const run = promisify(execFile)
    const program = path.join(import.meta.dirname, 'processes/makeKey.ts')
    const started = Array.from({ length: 4 }, () =>
      run(process.execPath, ['--import', 'tsx', program, folder]),
    )
    const said = (await Promise.all(started)).map(({ stdout }) => stdout)
    expect(new Set(said).size).toBe(1)
    expect(said[0]).toMatch(/^[0-9a-f]{64}$/)
    expect(readdirSync(folder).sort()).toEqual(['seal-key.known', 'seal-key.pem'])
  })

  test('is one and the same for calls that start at once', async () => {
    const made = await Promise.all(Array.from({ length: 5 }, () => sealKey(folder, madeAt)))
    expect(new Set(made.map(fingerprintOf)).size).toBe(1)
  })

  test('is made although a process was killed while it made one', async () => {
    writeFileSync(`${keyFile()}.0123456789.new`, '-----BEGIN PRIV', { mode: 0o600 })
    expect(fingerprintOf(await sealKey(folder, madeAt))).toMatch(/^[0-9a-f]{64}$/)
  })

  test('is taken on where a process was killed before it wrote the note', async () => {
    const made = fingerprintOf(await sealKey(folder, madeAt))
    rmSync(noteFile())
    expect(fingerprintOf(await sealKey(folder, madeAt, { sealedBefore: true }))).toBe(made)
    expect(readFileSync(noteFile(), 'utf8').trim()).toBe(made)
  })
})

describe('no new seal is made on the quiet', () => {
  test('where the key is gone and the note is there', async () => {
    const made = fingerprintOf(await sealKey(folder, madeAt))
    renameSync(keyFile(), `${keyFile()}.backup`)
    expect(faultOf(await sealKey(folder, madeAt))).toBe('missing')
    expect(existsSync(keyFile())).toBe(false)
    renameSync(`${keyFile()}.backup`, keyFile())
    expect(fingerprintOf(await sealKey(folder, madeAt))).toBe(made)
  })

  test('where both are gone and the install holds sealed records', async () => {
    expect(faultOf(await sealKey(folder, madeAt, { sealedBefore: true }))).toBe('missing')
    expect(readdirSync(folder)).toEqual([])
  })

  test('where another key stands in its place', async () => {
    await sealKey(folder, madeAt)
    const other = path.join(folder, 'other')
    mkdirSync(other)
    await sealKey(other, madeAt)
    renameSync(path.join(other, 'seal-key.pem'), keyFile())
    expect(faultOf(await sealKey(folder, madeAt))).toBe('other-key')
  })

  test.each([
    ['empty', () => ''],
    ['cut short', (whole: string) => whole.slice(0, whole.length / 2)],
    ['without its certificate', (whole: string) => whole.slice(0, whole.indexOf('-----BEGIN CERTIFICATE'))],
    ['with a changed head of the key', (whole: string) => whole.replace(/^(.*\n.{20})..../, '$1AAAA')],
    ['with a changed figure in the key', (whole: string) => changedInLine(whole, 15)],
    ['with a changed figure at the end of the key', (whole: string) => changedInLine(whole, 25)],
    ['with a changed certificate', (whole: string) => changedInLine(whole, 36)],
    ['with something behind it', (whole: string) => `${whole}more`],
  ])('where the file is %s', async (_, change) => {
    await sealKey(folder, madeAt)
    const changed = change(readFileSync(keyFile(), 'utf8'))
    writeFileSync(keyFile(), changed)
    expect(faultOf(await sealKey(folder, madeAt))).toBe('broken')
    expect(readFileSync(keyFile(), 'utf8')).toBe(changed)
  })

  test('where the key of one install and the certificate of another stand in one file', async () => {
    await sealKey(folder, madeAt)
    const other = path.join(folder, 'other')
    mkdirSync(other)
    await sealKey(other, madeAt)
    const half = (file: string) => readFileSync(file, 'utf8').split(/(?=-----BEGIN CERTIFICATE)/)
    const mixed = `${half(keyFile())[0]}${half(path.join(other, 'seal-key.pem'))[1]}`
    writeFileSync(keyFile(), mixed)
    expect(faultOf(await sealKey(folder, madeAt))).toBe('broken')
  })

  test.each([0o644, 0o640, 0o602])('where others can read or change it: mode %o', async (mode) => {
    await sealKey(folder, madeAt)
    chmodSync(keyFile(), mode)
    const result = await sealKey(folder, madeAt)
    expect(faultOf(result)).toBe('open-to-others')
    expect(!result.ok && sealKeyText(result.fault)).toContain(mode.toString(8))
  })

  test.each(['seal-key.pem', 'seal-key.known'])('where %s can’t be read', async (name) => {
    await sealKey(folder, madeAt)
    rmSync(path.join(folder, name))
    mkdirSync(path.join(folder, name))
    expect(faultOf(await sealKey(folder, madeAt))).toBe('unreadable')
  })

  test('where its time is over', async () => {
    await sealKey(folder, madeAt)
    expect(faultOf(await sealKey(folder, new Date('2047-03-01T08:00:01Z')))).toBe('expired')
  })
})

test('a new seal is made where the note says so, and the note then names it', async () => {
  const first = fingerprintOf(await sealKey(folder, madeAt))
  rmSync(keyFile())
  // As whoever runs the install would write it.
  writeFileSync(noteFile(), 'new\n')
  const second = fingerprintOf(await sealKey(folder, madeAt, { sealedBefore: true }))
  expect(second).not.toBe(first)
  expect(readFileSync(noteFile(), 'utf8').trim()).toBe(second)
})

test('a data folder that is not there is told', async () => {
  expect(faultOf(await sealKey(path.join(folder, 'none'), madeAt))).toBe('not-kept')
})
