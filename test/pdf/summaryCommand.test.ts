import { execFile } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import path from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { sha256Of } from './madeSummary.ts'
import { creationDateOf, readPdf } from './readPdf.ts'

const root = path.join(import.meta.dirname, '../..')
const example = path.join(root, 'prisma/example/notebook.json')
const folder = mkdtempSync(path.join(tmpdir(), 'mearing-summary-'))
afterAll(() => rmSync(folder, { recursive: true }))

const least = { format: 'mearing-notebook', version: 1, currency: 'USD', households: { a: {}, b: {} } }

type Ended = { readonly status: number; readonly out: string; readonly error: string }

/** What `npm run -s summary -- …` runs. */
function summary(args: readonly string[], environment: Record<string, string> = {}): Promise<Ended> {
  const command = ['--import', 'tsx', 'lib/commands/summary.ts', ...args]
  return new Promise((resolve) => {
    execFile(
      process.execPath,
      command,
      { cwd: root, env: { ...process.env, ...environment } },
      (failed, out, error) => {
        resolve({ status: failed ? Number(failed.code) : 0, out, error })
      },
    )
  })
}

// Each run starts a program of its own.
describe('npm run -s summary -- FILE OUT.pdf', { timeout: 120_000 }, () => {
  test('writes the draft, and says nothing', async () => {
    const target = path.join(folder, 'a.pdf')
    expect(await summary([example, target])).toEqual({ status: 0, out: '', error: '' })
    const { pages, attachments } = await readPdf(readFileSync(target))
    const agreement = attachments.get('agreement.json') ?? new Uint8Array()
    expect(pages[0]?.texts.map(({ text }) => text)).toContain(
      `SHA-256 of agreement.json: ${sha256Of(agreement)}`,
    )
  })

  test('writes the same bytes again, and a date only where SOURCE_DATE_EPOCH gives one', async () => {
    const file = path.join(folder, 'least.json')
    writeFileSync(file, JSON.stringify(least))
    const [first, second, dated] = [
      path.join(folder, 'b.pdf'),
      path.join(folder, 'c.pdf'),
      path.join(folder, 'd.pdf'),
    ]
    await Promise.all([summary([file, first]), summary([file, second])])
    await summary([file, dated], { SOURCE_DATE_EPOCH: '1800000000' })
    expect(sha256Of(readFileSync(second))).toBe(sha256Of(readFileSync(first)))
    expect(readFileSync(first, 'latin1')).not.toContain('CreationDate')
    // 1800000000 seconds after 1970 is 2027-01-15 08:00:00 UTC (`date -u -d @1800000000`).
    expect(await creationDateOf(readFileSync(dated))).toBe('D:20270115080000Z')
  })

  test.each([
    [
      'a share that can’t be worked out',
      {
        common: [
          {
            id: 'c',
            materials: [{ quantity: '1', unitPrice: '1', suppliedBy: 'bought' }],
            share: { together: { principle: 'benefit', a: '0', b: '0' } },
          },
        ],
      },
      /^common\[0\]\.share\.together: /,
    ],
    ['a field that does not hold', { currency: 'dollars' }, /^currency: /],
  ])('ends with status 1, the path of the fault and no file on %s', async (_, more, fault) => {
    const [file, target] = [path.join(folder, 'bad.json'), path.join(folder, 'bad.pdf')]
    writeFileSync(file, JSON.stringify({ ...least, ...more }))
    const ended = await summary([file, target])
    expect(ended.status).toBe(1)
    expect(ended.out).toBe('')
    expect(ended.error).toMatch(fault)
    expect(existsSync(target)).toBe(false)
  })

  test('ends with status 1 where a file can’t be read or written, or is not named', async () => {
    const runs = [
      [example],
      [path.join(folder, 'none.json'), path.join(folder, 'e.pdf')],
      [example, path.join(folder, 'none/e.pdf')],
    ]
    for (const args of runs) {
      const ended = await summary(args)
      expect(ended.status).toBe(1)
      expect(ended.error).toMatch(/^\(file\): .+\n$/)
    }
  })
})
