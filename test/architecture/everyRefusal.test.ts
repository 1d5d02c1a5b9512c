import { expect, test } from 'vitest'
import { everyGroup } from '../screens/everyRefusal/everyGroup.ts'
import { kindsIn } from '../screens/everyRefusal/kindsIn.ts'
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
