import { describe, expect, test } from 'vitest'
import { agreementText } from '../../lib/core/agreement/canonicalText.ts'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { documentText } from '../../lib/forms/parts.ts'
import { readNotebook, unknownKeys } from '../../lib/forms/readNotebook.ts'

const least = '"format":"mearing-notebook","version":1,"currency":"USD","households":{"a":{},"b":{}}'
const many = (count: number, entry: (index: number) => string) =>
  Array.from({ length: count }, (_, index) => entry(index)).join(',')
const share = '"share":{"materials":{"principle":"equal"},"labour":{"principle":"equal"}}'

/** Reads a file and does with it all that a page does, and says how it went. */
function read(text: string): { ok: boolean; kinds: Set<string> } {
  const result = readNotebook(text)
  if (result.ok) {
    const { document, notebook } = result.value
    statementOf(notebook)
    unknownKeys(document)
    agreementText(document)
    const again = readNotebook(documentText(document))
    if (!again.ok) throw new Error('what was taken once is refused the second time')
  }
  const kinds = new Set(result.ok ? [] : result.faults.map(({ kind }) => kind))
  return { ok: result.ok, kinds }
}

// Up to 2 MB are taken. One that is read in a way that grows with the square of its size would not end within the test's limit.
describe('a hostile file neither stops the program nor makes it fail:', () => {
  test.each<[string, () => string, boolean]>([
    ['10,000 lists inside one another', () => '['.repeat(10_000) + ']'.repeat(10_000), false],
    [
      '10,000 lists inside one another, deep inside a notebook',
      () => `{${least},"x":${'['.repeat(10_000)}${']'.repeat(10_000)}}`,
      false,
    ],
    ['10,000 objects inside one another', () => `${'{"a":'.repeat(10_000)}1${'}'.repeat(10_000)}`, false],
    ['a million lists inside one another', () => '['.repeat(1_000_000) + ']'.repeat(1_000_000), false],
    ['a million lists that are never closed', () => '['.repeat(1_000_000), false],
    ['one text of 2 MB', () => `{${least},"title":"${'x'.repeat(2_000_000)}"}`, true],
    ['one text of 2 MB of escapes', () => `{${least},"title":"${'\\u0041'.repeat(330_000)}"}`, true],
    [
      'a length of 2 MB of blanks',
      () => `{${least},"line":{"stations":[{"at":"${' '.repeat(2_000_000)}ft"}]}}`,
      false,
    ],
    ['a number of 2 MB of figures', () => `{${least},"caps":{"a":"${'1'.repeat(2_000_000)}"}}`, false],
    ['money with 2 MB of digits', () => `{${least},"caps":{"a":"0.${'1'.repeat(2_000_000)}"}}`, false],
    ['100,000 keys of the same name', () => `{${least},${many(100_000, () => '"k":1')}}`, false],
    ['100,000 keys that nobody knows', () => `{${least},${many(100_000, (index) => `"k${index}":1`)}}`, true],
    ['200,000 terms that are no terms', () => `{${least},"terms":[${many(200_000, () => '1')}]}`, false],
    [
      '10,000 sections, each with a fault',
      () => `{${least},"sections":[${many(10_000, (index) => `{"id":"s${index}","name":5,${share}}`)}]}`,
      false,
    ],
    [
      '10,000 sections and one fault',
      () => `{${least},"title":5,"sections":[${many(10_000, (index) => `{"id":"s${index}",${share}}`)}]}`,
      false,
    ],
    [
      '15,000 sections of the same id',
      () => `{${least},"sections":[${many(15_000, () => `{"id":"s",${share}}`)}]}`,
      false,
    ],
    [
      '15,000 entries for what is not there',
      () =>
        `{${least},"contributions":[${many(15_000, () => '{"household":"a","kind":"cash","amount":"1","date":"2027-01-01","for":"q"}')}]}`,
      false,
    ],
    ['a number too large for a number', () => `{${least},"x":1e400}`, false],
    [
      'a currency that cannot be written as text',
      () =>
        `{"format":"mearing-notebook","version":1,"currency":{"toString":1},"households":{"a":{},"b":{}}}`,
      false,
    ],
    [
      'a format that cannot be written as text',
      () => `{"format":{"toJSON":1,"toString":2},"version":1}`,
      false,
    ],
  ])(
    '%s',
    (_, text, taken) => {
      expect(read(text()).ok).toBe(taken)
    },
    60_000,
  )
})

describe('keys that every object of the language has', () => {
  const hostile = ['__proto__', 'constructor', 'prototype', 'toString', 'hasOwnProperty', 'valueOf', 'toJSON']

  test.each(hostile)('are data like any other: %s', (key) => {
    const text = `{${least},"${key}":{"title":"x","sections":[1]},"terms":[{"topic":"t","${key}":"y"}]}`
    const result = readNotebook(text)
    if (!result.ok) throw new Error(JSON.stringify(result.faults))
    const { document, notebook } = result.value
    expect(notebook.title).toBe('')
    expect(notebook.sections).toEqual([])
    expect(unknownKeys(document).sort()).toEqual([key, `terms[0].${key}`].sort())
    expect(JSON.stringify(JSON.parse(documentText(document)))).toBe(text)
    expect(agreementText(document)).toContain(`"${key}":{"sections":[1],"title":"x"}`)
  })

  test('as a currency, an id, a principle or a household are refused or taken as text, and change nothing in the language', () => {
    for (const key of hostile) {
      expect(
        readNotebook(
          `{"format":"mearing-notebook","version":1,"currency":"${key}","households":{"a":{},"b":{}}}`,
        ).ok,
      ).toBe(false)
      expect(
        readNotebook(`{${least},"sections":[{"id":"s1","share":{"together":{"principle":"${key}"}}}]}`).ok,
      ).toBe(false)
      expect(readNotebook(`{${least},"sections":[{"id":"${key}",${share}}]}`).ok).toBe(true)
    }
    expect(({} as Record<string, unknown>).title).toBeUndefined()
  })
})
