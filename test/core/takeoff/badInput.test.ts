import { describe, expect, test } from 'vitest'
import { statementOf } from '../../../lib/core/shares/statement.ts'
import { statementFile } from '../../../lib/core/shares/statementFile.ts'
import { takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import { readNotebook } from '../../../lib/forms/readNotebook.ts'
import { takeOffFile } from '../../../lib/words/takeoff/takeOffFile.ts'
import { clashDocument, clashes, withoutPlaces } from './clashes.ts'
import { fence, gateAt } from './madeFence.ts'

// From the file's text to the printed sentence, as a person meets it.

function read(document: unknown) {
  const found = readNotebook(JSON.stringify(document))
  if (!found.ok) throw new Error(JSON.stringify(found.faults))
  return found.value.notebook
}

function statementText(document: unknown): string {
  const statement = statementOf(read(document))
  if (!statement.ok) throw new Error(JSON.stringify(statement.faults))
  return JSON.stringify(statementFile(statement.value))
}

describe.each(clashes)('$what', (clash) => {
  const document = clashDocument(clash)
  const notebook = read(document)
  const printed = takeOffFile(notebook, takeOff(notebook))
  const finding = printed.findings.find(({ path, kind }) => path === clash.path && kind === clash.kind)

  test('is listed by the take-off at the field where it is typed', () => {
    expect(printed.findings.map(({ path, kind }) => [path, kind])).toContainEqual([clash.path, clash.kind])
  })

  test('is a sentence with every figure that clashes', () => {
    for (const figure of clash.figures) expect(finding?.text).toContain(figure)
  })

  test('gives those figures to machines too', () => {
    const texts = Object.values(finding?.numbers ?? {}).map(({ text }) => text)
    // What was typed as zero is no length, and is quoted.
    const lengths = clash.figures.filter((figure) => !figure.startsWith('"'))
    expect(texts).toEqual(expect.arrayContaining(lengths))
  })

  test('leaves the statement of shares as it is without any place, gate or build-up', () => {
    expect(statementText(document)).toBe(statementText(withoutPlaces(clash)))
  })

  test('takes nothing off that is not a number', () => {
    expect(JSON.stringify(printed)).not.toMatch(/NaN|Infinity|undefined/)
  })
})

test('an opening in a section, or between two, is no clash', () => {
  for (const sections of [[fence('0 ft', '40 ft')], [fence('0 ft', '18 ft'), fence('22 ft', '40 ft')]]) {
    const notebook = read(clashDocument({ sections, gates: [gateAt('20 ft', '4 ft')] }))
    expect(takeOff(notebook).findings).toEqual([])
  }
})
