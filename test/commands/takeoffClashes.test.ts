import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { allClashes, clashDocument, clashes, withoutPlaces } from '../core/takeoff/clashes.ts'

const folder = mkdtempSync(join(tmpdir(), 'mearing-clashes-'))
afterAll(() => rmSync(folder, { recursive: true }))

function run(command: 'takeoff' | 'statement', name: string, document: unknown) {
  const path = join(folder, name)
  writeFileSync(path, JSON.stringify(document))
  return spawnSync(process.execPath, ['--import', 'tsx', `lib/commands/${command}.ts`, path], {
    cwd: join(import.meta.dirname, '..', '..'),
    encoding: 'utf8',
  })
}

test('a notebook with every clash in it is taken off, each clash is a finding, and its statement stands', {
  timeout: 60_000,
}, () => {
  const all = allClashes()
  const document = clashDocument(all, all.line)
  const { status, stdout, stderr } = run('takeoff', 'clashes.json', document)
  expect([status, stderr]).toEqual([0, ''])
  const { findings } = JSON.parse(stdout) as { findings: { kind: string; path: string; text: string }[] }
  const kinds = new Set(findings.map(({ kind }) => kind))
  for (const { kind } of clashes) expect(kinds).toContain(kind)
  for (const { path, text } of findings) {
    expect(path).toMatch(/^(sections|gates|line)/)
    expect(text).toMatch(/\.$/)
  }
  const [clashing, bare] = [document, withoutPlaces(all)].map((one, at) =>
    run('statement', `statement-${at}.json`, one),
  )
  expect(clashing?.status).toBe(0)
  expect(clashing?.stdout).toBe(bare?.stdout)
})
