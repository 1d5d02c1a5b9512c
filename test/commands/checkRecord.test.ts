import { execFile } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, truncateSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { oneKey, sealedRecord, signedPaper, smallNotebook } from '../seal/madeRecord.ts'

const root = path.join(import.meta.dirname, '../..')
const folder = mkdtempSync(path.join(tmpdir(), 'mearing-check-'))
afterAll(() => rmSync(folder, { recursive: true }))

const place = (name: string) => path.join(folder, name)
const good = place('good.pdf')
let record: Buffer

beforeAll(async () => {
  record = await sealedRecord()
  writeFileSync(good, record)
  writeFileSync(place('changed.pdf'), Buffer.from(record).fill('x', 5000, 5001))
  writeFileSync(place('unsealed.pdf'), await signedPaper(smallNotebook()))
})

type Ended = { readonly status: number; readonly out: string; readonly error: string }

/** What `npm run -s check-record -- …` runs, with no data folder and no database to be found. */
function checkRecord(...args: readonly string[]): Promise<Ended> {
  const command = ['--import', 'tsx', 'lib/commands/checkRecord.ts', ...args]
  const env = { ...process.env, MEARING_DATA: place('there-is-no-data-folder') }
  return new Promise((resolve) => {
    execFile(process.execPath, command, { cwd: root, env }, (failed, out, error) => {
      resolve({ status: failed ? Number(failed.code) : 0, out, error })
    })
  })
}

describe('npm run -s check-record -- FILE.pdf', () => {
  test('says in plain sentences that a locked copy holds, and what that does not show', async () => {
    const { status, out, error } = await checkRecord(good)
    expect([status, error]).toEqual([0, ''])
    const { fingerprint } = await oneKey()
    expect(out).toContain(
      `${good}\nThe seal holds: nothing was changed since it was made. Compare its fingerprint with that of a copy that you trust.\n`,
    )
    expect(out).toContain(`covers the whole file to its end, all ${record.length} bytes`)
    expect(out).toContain('4 March 2027, 20:01 UTC')
    expect(out).toContain(fingerprint)
    expect(out).toContain('Upper Mill is asked for $60.01 and Lower Mill for $60.00, of $120.01 in all.')
    expect(out).toContain('It does not show who signed.')
    expect(out).toContain('It proves nothing against whoever runs the install')
  })

  test('needs no more than the program’s own script', () => {
    const { scripts } = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8'))
    expect(scripts['check-record']).toBe('tsx lib/commands/checkRecord.ts')
  })

  test.each([
    ['changed.pdf', 'The file was changed after it was locked'],
    ['unsealed.pdf', 'This PDF has no seal.'],
  ])('ends with status 1 and the reason for %s', async (name, reason) => {
    const { status, out } = await checkRecord(place(name))
    expect(status).toBe(1)
    expect(out).toContain('This is no locked copy that holds.')
    expect(out).toContain(reason)
  })

  test('looks at every file, and ends with status 1 if one of them does not hold', async () => {
    const { status, out } = await checkRecord(good, place('changed.pdf'), place('none.pdf'), folder)
    expect(status).toBe(1)
    expect(out.match(/The seal holds: nothing was changed/g)).toHaveLength(1)
    expect(out.match(/This is no locked copy that holds\./g)).toHaveLength(1)
    expect(out.match(/The file can't be read: /g)).toHaveLength(2)
    expect((await checkRecord(good, good)).status).toBe(0)
  })

  test('prints JSON for machines', async () => {
    const { status, out } = await checkRecord('--json', good, place('unsealed.pdf'), place('none.pdf'))
    expect(status).toBe(1)
    const { fingerprint } = await oneKey()
    const hash = expect.stringMatching(/^[0-9a-f]{64}$/)
    expect(JSON.parse(out)).toEqual([
      {
        file: good,
        holds: true,
        bytes: record.length,
        problems: [],
        seal: { certificateSha256: fingerprint, sealedAt: '2027-03-04T20:01:00.000Z' },
        agreement: { sha256: hash, title: 'The lane fence' },
        printedSha256: hash,
        asked: { currency: 'USD', total: '120.01', a: '60.01', b: '60.00' },
        signatures: [
          { household: 'a', partyName: 'Ada Holm', signedAt: '2027-03-04T20:01:00.000Z' },
          { household: 'b', partyName: 'Ben Rook', signedAt: '2027-03-04T20:01:00.000Z' },
        ],
      },
      expect.objectContaining({
        file: place('unsealed.pdf'),
        holds: false,
        seal: null,
        problems: [{ kind: 'no-seal', text: expect.any(String) }],
      }),
      { file: place('none.pdf'), holds: false, unreadable: expect.stringContaining('ENOENT') },
    ])
  })

  test('does not read a file that is far too large', async () => {
    writeFileSync(place('huge.pdf'), '%PDF-1.7\n')
    // A file of 100 GB without a byte on the disk.
    truncateSync(place('huge.pdf'), 100_000_000_000)
    const { status, out } = await checkRecord(place('huge.pdf'))
    expect(status).toBe(1)
    expect(out).toContain('The file has 100000000000 bytes.')
  })

  test('lets no name in the file write on the terminal', async () => {
    const read = smallNotebook({ title: 'Lane\u001b[2J\u202egnol\u2028x' })
    writeFileSync(place('title.pdf'), await sealedRecord(read))
    const { out } = await checkRecord(place('title.pdf'))
    expect(out).toContain('The notebook inside is “Lane')
    expect(out.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Cf}\u2028]/u)
  })

  test.each([[[]], [['--json']], [['--other', good]]])('needs a file: %j', async (args) => {
    const { status, out, error } = await checkRecord(...args)
    expect([status, out]).toEqual([1, ''])
    expect(error).toMatch(/^\(file\): .+\n$/)
  })
})
