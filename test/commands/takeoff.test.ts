import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { readyBuildUps } from '../../lib/core/takeoff/readyBuildUps.ts'
import { documentWith } from '../core/madeNotebook.ts'
import { fence, gateAt } from '../core/takeoff/madeFence.ts'

const folder = mkdtempSync(join(tmpdir(), 'mearing-takeoff-'))
afterAll(() => rmSync(folder, { recursive: true }))

/** Runs the command as `npm run -s takeoff` does. */
function run(...files: string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', 'tsx', 'lib/commands/takeoff.ts', ...files],
    { cwd: join(import.meta.dirname, '..', '..'), encoding: 'utf8' },
  )
  return { status, stdout, stderr }
}

function written(name: string, data: unknown): string {
  const path = join(folder, name)
  writeFileSync(path, JSON.stringify(data))
  return path
}

const steel = readyBuildUps[0]

describe('npm run -s takeoff', () => {
  test('prints posts, pieces, cut plans, quantities, weights, setbacks, heights and findings', () => {
    const document = documentWith({
      line: {
        error: '1 in',
        limits: [{ limit: '5 ft', saidBy: 'permit office' }],
        stations: [
          { at: '0 ft', setback: { side: 'a', distance: '2 in' } },
          { at: '100 ft', setback: { side: 'a', distance: '4 in' } },
        ],
      },
      sections: [fence('0 ft', '100 ft', { buildUp: steel?.section })],
      gates: [gateAt('50 ft', '4 ft', { opens: 'toward household a', buildUp: steel?.gate })],
    })
    const { status, stdout, stderr } = run(written('fence.json', document))
    expect(stderr).toBe('')
    expect(status).toBe(0)
    const printed = JSON.parse(stdout)
    expect(Object.keys(printed)).toEqual([
      'posts',
      'pieces',
      'cutPlans',
      'units',
      'quantities',
      'weights',
      'gates',
      'work',
      'setbacks',
      'heights',
      'limits',
      'wind',
      'findings',
    ])
    // Two runs of 47 ft 10 9/16 in: six bays and seven posts each.
    expect(printed.posts).toHaveLength(14)
    expect(printed.posts[0]).toMatchObject({ post: 1, kind: 'end', standsOn: 'a', holeCrossesLine: 'yes' })
    // 100 ft between 2 in and 4 in.
    expect(printed.setbacks.landOnTheOtherSide).toEqual({ a: '25 sq ft', b: '0 sq ft' })
    expect(printed.findings.map(({ path, kind }: { path: string; kind: string }) => [path, kind])).toEqual([
      ['line.limits[0]', 'over-limit'],
    ])
    expect(printed.findings[0].text).toContain('permit office')
    expect(printed.cutPlans.length).toBeGreaterThan(0)
    for (const { lengths, kerf } of printed.cutPlans) {
      for (const { length, pieces, rest, cuts } of lengths) {
        const cut = pieces.reduce(
          (sum: number, piece: { length: { millimetres: number }; count: number }) =>
            sum + piece.length.millimetres * piece.count,
          0,
        )
        expect(cut + cuts * kerf.millimetres + rest.millimetres).toBeCloseTo(length.millimetres, 3)
      }
    }
  })

  test('findings are no faults: a gate beyond the line still exits with 0', () => {
    const document = documentWith({
      sections: [fence('0 ft', '24 ft')],
      gates: [gateAt('1 ft', '4 ft')],
      line: { stations: [{ at: '0 ft' }, { at: '24 ft' }] },
    })
    const { status, stdout } = run(written('beyond.json', document))
    expect(status).toBe(0)
    expect(JSON.parse(stdout).findings[0].path).toBe('gates[0].at')
  })

  test('a file that does not hold: nothing on standard output, a line for each fault, exit status 1', () => {
    const buildUp = { posts: { spacing: '8', hole: 'wide' } }
    const document = documentWith({ sections: [fence('0 ft', '24 ft', { buildUp })] })
    const { status, stdout, stderr } = run(written('faulty.json', document))
    expect(status).toBe(1)
    expect(stdout).toBe('')
    expect(
      stderr
        .trim()
        .split('\n')
        .map((line) => line.split(': ')[0]),
    ).toEqual(['sections[0].buildUp.posts.spacing', 'sections[0].buildUp.posts.hole'])
  })

  test.each([[[]], [['one.json', 'two.json']], [[join(folder, 'nowhere.json')]]])(
    'without one file that is there it says so and exits with 1',
    (files) => {
      const { status, stdout, stderr } = run(...files)
      expect([status, stdout]).toEqual([1, ''])
      expect(stderr).toMatch(/^\(file\): .+\n$/)
    },
  )
})
