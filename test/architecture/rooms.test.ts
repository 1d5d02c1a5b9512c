import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, test } from 'vitest'
import { pageSources } from '../../lib/commands/sourceStamp.mjs'
import { importOffences, nameOffences, topLevelOffences } from './offences.ts'
import { roomRules } from './rooms.ts'

const projectFolder = path.join(import.meta.dirname, '../..')

/** What git keeps, as `git ls-files` lists it. */
function keptFiles(): string[] {
  const listed = execFileSync('git', ['ls-files', '-z'], { cwd: projectFolder, encoding: 'utf8' })
  return listed.split('\0').filter((name) => name !== '')
}

/** What git keeps or would keep: a new file is held against the table before it is committed. */
function filesIn(...folders: string[]): string[] {
  const command = ['ls-files', '-z', '--cached', '--others', '--exclude-standard', '--', ...folders]
  const listed = execFileSync('git', command, { cwd: projectFolder, encoding: 'utf8' })
  const deleted = execFileSync('git', ['ls-files', '-z', '--deleted'], {
    cwd: projectFolder,
    encoding: 'utf8',
  })
  const gone = new Set(deleted.split('\0'))
  return [...new Set(listed.split('\0'))].filter((name) => name !== '' && !gone.has(name))
}

const read = (name: string) => ({ name, source: readFileSync(path.join(projectFolder, name), 'utf8') })

describe('the repository', () => {
  test('keeps to the table of rooms in every import', () => {
    const files = filesIn('lib', 'app').filter((name) => /\.(ts|tsx|mts|mjs|js|jsx)$/.test(name))
    expect(files.length).toBeGreaterThan(10)
    expect(importOffences(files.map(read))).toEqual([])
  })

  test('has no file or folder whose name says nothing', () => {
    expect(nameOffences(filesIn('lib', 'app', 'test', 'prisma'))).toEqual([])
  })

  test('has nothing at its top but what belongs there', () => {
    expect(topLevelOffences(keptFiles())).toEqual([])
  })
})

test('a start builds anew when data that a room imports has changed', () => {
  const data = Object.values(roomRules).flatMap((rule) => rule.data ?? [])
  expect(data.length).toBeGreaterThan(0)
  const unwatched = data.filter((name) => !pageSources.some((source) => name.startsWith(`${source}/`)))
  expect(unwatched).toEqual([])
})

describe('the check of imports catches', () => {
  test.each([
    ['lib/core/amounts/money.ts', `import { readFileSync } from 'node:fs'`],
    ['lib/core/amounts/money.ts', `import type { Word } from '../../words/word.ts'`],
    ['lib/core/amounts/money.ts', `export * from '../../store/write.ts'`],
    ['lib/words/sentence.ts', `const clock = await import('node:perf_hooks')`],
    ['lib/words/sentence.ts', `type Row = import('../store/write.ts').Row`],
    ['lib/forms/readLength.ts', `import { PrismaClient } from '../../prisma/generated/client.ts'`],
    ['lib/core/agreement/notebook.ts', `import example from '../../../prisma/example/notebook.json'`],
    ['lib/store/write.ts', `import { page } from '../../app/page.tsx'`],
    ['lib/store/write.ts', `const driver = require('better-sqlite3')`],
    ['lib/access/session.ts', `import { PDFDocument } from 'pdf-lib'`],
    ['lib/pdf/summary.ts', `import { write } from '../store/write.ts'`],
    ['lib/drawing/plan.ts', `import React from 'react'`],
    ['lib/cupboard/thing.ts', `import { money } from '../core/amounts/money.ts'`],
    ['lib/core/amounts/money.ts', `import { shelf } from '../../cupboard/thing.ts'`],
    ['lib/core/amounts/money.ts', `const name = 'x'; await import(name)`],
    ['lib/core/amounts/money.ts', `import { made } from '../../../test/core/made.ts'`],
    ['lib/commands/statement.ts', `import { page } from '../../app/page.tsx'`],
    ['app/page.tsx', `import { PrismaClient } from '@prisma/client'`],
    ['app/page.tsx', `import { PrismaClient } from '../prisma/generated/client.ts'`],
    ['app/page.tsx', `import { PDFDocument } from 'pdf-lib'`],
    ['app/page.tsx', `import Database from 'better-sqlite3'`],
    ['app/page.tsx', `import forge from 'node-forge'`],
    ['lib/pdf/summary.ts', `import { SignPdf } from '@signpdf/signpdf'`],
    ['lib/seal/sealKey.ts', `import { readFileSync } from 'node:fs'`],
    ['app/page.tsx', `import { startLines } from '../lib/commands/addresses.mjs'`],
    ['app/ui/Field.tsx', `import made from '../../test/core/made.ts'`],
  ])('%s: %s', (name, source) => {
    expect(importOffences([{ name, source }])).toHaveLength(1)
  })

  test('one offence among many allowed imports, and names the file and what it asked for', () => {
    const source = `import Decimal from 'decimal.js'\nimport { cent } from './cent.ts'\nimport os from 'node:os'`
    const offences = importOffences([{ name: 'lib/core/amounts/split.ts', source }])
    expect(offences).toEqual(['lib/core/amounts/split.ts: may not import node:os'])
  })
})

describe('the check of imports lets pass', () => {
  test.each([
    ['lib/core/agreement/canonicalText.ts', `import canonicalize from 'canonicalize'`],
    ['lib/words/money.ts', `import { money } from '../core/amounts/money.ts'`],
    ['lib/forms/readLength.ts', `import * as z from 'zod'`],
    ['lib/forms/example.ts', `import example from '../../prisma/example/notebook.json'`],
    ['lib/store/write.ts', `import { PrismaClient } from '../../prisma/generated/client.ts'`],
    ['lib/access/session.ts', `import { cookies } from 'next/headers'`],
    ['lib/commands/statement.ts', `import { read } from '../forms/read.ts'`],
    [
      'app/notebook/page.tsx',
      `import { read } from '../../lib/store/read.ts'; import Link from 'next/link'; import './a.css'`,
    ],
    // A word that only looks like an import.
    ['lib/core/people/household.ts', `/* import x from 'node:fs' */ export const text = "import('node:fs')"`],
  ])('%s: %s', (name, source) => {
    expect(importOffences([{ name, source }])).toEqual([])
  })
})

describe('the check of names', () => {
  test.each([
    'lib/core/index.ts',
    'app/ui/index.tsx',
    'lib/utils.ts',
    'lib/core/util/money.ts',
    'test/helpers/made.ts',
    'lib/core/date-utils.ts',
    'lib/store/NotebookManager.ts',
    'lib/store/notebookService.ts',
    'lib/store/service.ts',
  ])('catches %s', (name) => {
    expect(nameOffences([name])).toHaveLength(1)
  })

  test.each(['lib/core/checks/buriedServices.ts', 'app/ui/managerless.tsx', 'lib/core/amounts/indexing.ts'])(
    'lets %s pass',
    (name) => {
      expect(nameOffences([name])).toEqual([])
    },
  )
})

describe('the check of the top level', () => {
  test('catches a folder and a file that do not belong there', () => {
    const names = ['package.json', '.ci/run', 'lib/core/result.ts', 'docs/notes.md', 'vitest.config.ts']
    expect(topLevelOffences(names)).toEqual([
      'docs: has no place at the top of the repository',
      'vitest.config.ts: has no place at the top of the repository',
    ])
  })
})
