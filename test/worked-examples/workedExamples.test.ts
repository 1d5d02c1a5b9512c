/**
 * Every JSON file of this folder is one case: a notebook, how a layman redoes it with a pencil, and what the statement
 * must say of it, figure for figure. The expected figures were worked by hand from the notebook format
 * (`lib/forms/notebook-format.md`), not taken from the program.
 */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { type StatementFile, statementFile } from '../../lib/core/shares/statementFile.ts'
import { readNotebook } from '../../lib/forms/readNotebook.ts'

type WorkedExample = {
  /** One sentence in everyday language. */
  readonly case: string
  /** Step by step, in words and numbers. */
  readonly workedByHand: readonly string[]
  /** The notebook file … */
  readonly given?: unknown
  /** … or its very text, where what matters is lost in parsing: a key that stands twice, a byte order mark. */
  readonly givenText?: string
  /** Exactly what `npm run -s statement` prints … */
  readonly expected?: StatementFile
  /** … or the paths of the faults for which it refuses, in file order. */
  readonly expectedFaults?: readonly string[]
}

const folder = import.meta.dirname
const fileNames = readdirSync(folder)
  .filter((name) => name.endsWith('.json'))
  .sort()

function exampleIn(fileName: string): WorkedExample {
  return JSON.parse(readFileSync(join(folder, fileName), 'utf8')) as WorkedExample
}

type Outcome = { readonly expected: StatementFile } | { readonly expectedFaults: readonly string[] }

function outcomeOf(text: string): Outcome {
  const read = readNotebook(text)
  if (!read.ok) return { expectedFaults: read.faults.map((fault) => fault.path) }
  const statement = statementOf(read.value.notebook)
  if (!statement.ok) return { expectedFaults: statement.faults.map((fault) => fault.path) }
  return { expected: JSON.parse(JSON.stringify(statementFile(statement.value))) as StatementFile }
}

test('the folder holds at least forty worked examples', () => {
  expect(fileNames.length).toBeGreaterThanOrEqual(40)
})

test('every file says what it shows, how it is worked by hand, what is given and what is expected', () => {
  for (const fileName of fileNames) {
    const example = exampleIn(fileName)
    expect(example.case, fileName).toMatch(/\S/)
    expect(example.workedByHand.length, fileName).toBeGreaterThan(0)
    expect(
      [example.given, example.givenText].filter((given) => given !== undefined),
      fileName,
    ).toHaveLength(1)
    expect(
      [example.expected, example.expectedFaults].filter((outcome) => outcome !== undefined),
      fileName,
    ).toHaveLength(1)
  }
})

describe('worked by hand', () => {
  for (const fileName of fileNames) {
    const example = exampleIn(fileName)
    test(`${fileName.replace(/\.json$/, '')}: ${example.case}`, () => {
      const { expected, expectedFaults } = example
      expect(outcomeOf(example.givenText ?? JSON.stringify(example.given))).toStrictEqual(
        expected === undefined ? { expectedFaults } : { expected },
      )
    })
  }
})
