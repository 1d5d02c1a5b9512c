import { execFileSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { makeDatabaseFile } from '../store/temporaryDatabase.ts'

const root = join(import.meta.dirname, '../..')
let folder: string

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'mearing-seal-start-'))
  await makeDatabaseFile(join(folder, 'mearing.db'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

/** What the start says of the seal. */
function start(): string {
  return execFileSync(process.execPath, ['--import', 'tsx', join(root, 'lib/commands/makeSeal.ts')], {
    cwd: root,
    env: { ...process.env, MEARING_DATA: folder },
    encoding: 'utf8',
  })
}

describe('the first start', () => {
  test('makes a key that nobody else can read, and a later one leaves it as it is', () => {
    expect(start()).toBe('')
    const file = join(folder, 'seal-key.pem')
    expect(statSync(file).mode & 0o777).toBe(0o600)
    const made = readFileSync(file, 'utf8')
    expect(start()).toBe('')
    expect(readFileSync(file, 'utf8')).toBe(made)
  }, 60_000)

  test('says what to do where the key has gone, and makes no other', () => {
    start()
    rmSync(join(folder, 'seal-key.pem'))
    expect(start()).toContain('Records can’t be locked for now.')
    expect(existsSync(join(folder, 'seal-key.pem'))).toBe(false)
  }, 60_000)
})
