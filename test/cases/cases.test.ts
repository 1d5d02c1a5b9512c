import { readdirSync, readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, test } from 'vitest'
import { beyondTolerance } from '../../lib/core/ledger/tolerance.ts'
import { type Statement, statementOf } from '../../lib/core/shares/statement.ts'
import { readNotebook } from '../../lib/forms/readNotebook.ts'
import { moneyWords } from '../../lib/words/money.ts'

const folder = import.meta.dirname
const page = readFileSync(path.join(folder, '../../lib/core/shares/adverse-cases.md'), 'utf8')

type Row = { readonly label: string; readonly a: string; readonly b: string }
type Table = { readonly file: string; readonly rows: readonly Row[] }

/** Every table of the page, with the notebook that is named above it. */
const tables: readonly Table[] = page
  .split(/^Notebook: /m)
  .slice(1)
  .map((part) => ({
    file: /^`([a-z-]+\.json)`/.exec(part)?.[1] ?? '',
    rows: [...part.matchAll(/^\| ([A-Z][^|]*?) *\| ([^|]*?) *\| ([^|]*?) *\|$/gm)].map(
      ([, label = '', a = '', b = '']) => ({ label, a, b }),
    ),
  }))

function notebookOf(file: string) {
  const read = readNotebook(readFileSync(path.join(folder, file)))
  if (!read.ok) throw new Error(`${file}: ${JSON.stringify(read.faults)}`)
  return read.value.notebook
}

const figures: Readonly<Record<string, (statement: Statement) => { a: bigint; b: bigint }>> = {
  Asked: ({ asked }) => asked,
  'Before caps': ({ beforeCaps }) => beforeCaps,
  'Promised in kind and hours': ({ promised }) => promised,
  'To bring in money': ({ inMoney }) => inMoney,
  'Given so far': ({ contributed }) => contributed,
  'Still to give': ({ balance }) => balance,
  'To pay the other': ({ transfer }) => ({
    a: transfer?.from === 'a' ? transfer.amount : 0n,
    b: transfer?.from === 'b' ? transfer.amount : 0n,
  }),
}

describe.each(tables)('$file', ({ file, rows }) => {
  const statement = statementOf(notebookOf(file))

  test.each(rows)('$label: $a and $b', ({ label, a, b }) => {
    const figure = figures[label]
    if (figure === undefined || !statement.ok) throw new Error(`nothing to hold “${label}” against`)
    const found = figure(statement.value)
    expect([moneyWords(found.a, 'USD'), moneyWords(found.b, 'USD')]).toEqual([a, b])
  })
})

test('the page names every notebook here, each has figures, and no case is missing', () => {
  const files = readdirSync(folder).filter((name) => name.endsWith('.json'))
  expect(tables.map(({ file }) => file).sort()).toEqual(files.sort())
  for (const { rows } of tables) expect(rows.length).toBeGreaterThan(0)
  expect(page.match(/^## [1-6]\. /gm)).toHaveLength(6)
})

test('steel that comes a fifth dearer takes the section beyond its tolerance, and as signed it is within', () => {
  const beyond = (file: string) => {
    const notebook = notebookOf(file)
    return beyondTolerance(notebook, 2, notebook.arrangements)
  }
  expect(beyond('steel-as-signed.json')).toEqual([])
  expect(beyond('steel-a-fifth-dearer.json')).toMatchObject([{ id: 's1', planned: 160100n, actual: 173600n }])
})
