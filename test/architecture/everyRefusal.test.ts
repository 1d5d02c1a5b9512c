import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import path from 'node:path'
import { describe, expect, test } from 'vitest'
import { everyGroup } from '../screens/everyRefusal/everyGroup.ts'
import { kindsIn } from '../screens/everyRefusal/kindsIn.ts'
import { looseRefusals } from '../screens/everyRefusal/looseRefusals.ts'
import { notMetInABrowser } from '../screens/everyRefusal/notMetInABrowser.ts'
import { refusalKeys } from '../screens/everyRefusal/refusalKeys.ts'

const met = new Set(everyGroup.flatMap(({ rows }) => rows.flatMap(({ refuses }) => refuses)))
const excused = Object.keys(notMetInABrowser)

test('every refusal is met in a browser, or it is said why it can’t be', async () => {
  const keys = await refusalKeys()
  expect(keys.length).toBeGreaterThan(80)
  expect(keys.filter((key) => !met.has(key) && !excused.includes(key))).toEqual([])
})

test('no row and no excuse names a refusal that there is none of', async () => {
  const keys = new Set(await refusalKeys())
  expect([...met, ...excused].filter((key) => !keys.has(key))).toEqual([])
})

test('what is met in a browser is not excused', () => {
  expect(excused.filter((key) => met.has(key))).toEqual([])
})

describe('every sentence of a refusal', () => {
  const projectFolder = path.join(import.meta.dirname, '../..')

  test('stands in an object of refusals, or is made of facts', () => {
    const listed = execFileSync('git', ['ls-files', 'app'], { cwd: projectFolder, encoding: 'utf8' })
    const files = listed.split('\n').filter((name) => /\.tsx?$/.test(name))
    expect(files.length).toBeGreaterThan(300)
    const loose = files.flatMap((name) =>
      looseRefusals(name, readFileSync(path.join(projectFolder, name), 'utf8')),
    )
    expect(loose).toEqual([])
  })

  test.each([
    `const answer = { refused: 'Not like this.' }`,
    `const answer = { message: \`Not \${this} one.\` }`,
    `import { words } from './words.ts'\nconst answer = { refused: words.no(1) }`,
    `const answer = { refused: one === two ? 'Not like this.' : '' }`,
    `return refuse('', 'Not like this.')`,
  ])('is missed where it stands elsewhere: %s', (source) => {
    expect(looseRefusals('action.ts', source)).toHaveLength(1)
  })

  test.each([
    `import { thingRefusals } from './words.ts'\nconst answer = { refused: thingRefusals.no(1) }`,
    `import { faultText } from './words.ts'\nconst answer = { message: faultText(fault) }`,
    `const answer = { refused: found.refused }`,
  ])('is not missed where it stands in a list: %s', (source) => {
    expect(looseRefusals('action.ts', source)).toEqual([])
  })
})

test('the kinds of a type are read from its source', () => {
  const source = `export type Told =
    | { readonly kind: 'one'; readonly at: number }
    /** With a word before it. */
    | { readonly at: string; readonly kind: 'two three' }
    | 'four'
  type Other = 'five'`
  expect(kindsIn('told.ts', source, 'Told')).toEqual(['one', 'two three', 'four'])
  expect(() => kindsIn('told.ts', source, 'Missing')).toThrow('no type Missing')
  expect(() => kindsIn('told.ts', 'type Told = { at: number }', 'Told')).toThrow('without a kind')
})
