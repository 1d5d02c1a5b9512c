import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { statementFile } from '../../lib/core/shares/statementFile.ts'
import { takeOff } from '../../lib/core/takeoff/takeOff.ts'
import { cutPlansFile } from '../../lib/cutting/cutPlansFile.ts'
import { readNotebook } from '../../lib/forms/readNotebook.ts'
import { takeOffFile } from '../../lib/words/takeoff/takeOffFile.ts'

/**
 * The notebook with every key of the take-off: its text and digests are held by `golden.test.ts` (see
 * never-regenerate.md); here what is worked out from it. Quantities are priced and cost lines agreed on, so a figure may
 * not change unnoticed. The figures of `takeoff.json` were compared with a second program, written in another language
 * from the format's description alone.
 */
const kept = (file: string) => readFileSync(join(import.meta.dirname, 'version-1', 'take-off', file), 'utf8')

const read = readNotebook(kept('notebook.json'))
if (!read.ok) throw new Error(JSON.stringify(read.faults))
const { document, notebook } = read.value

test('the same is taken off as when it was kept', async () => {
  const found = takeOff(notebook)
  const printed = JSON.parse(
    JSON.stringify({ ...takeOffFile(notebook, found), cutPlans: await cutPlansFile(notebook, found) }),
  )
  expect(printed).toMatchObject(JSON.parse(kept('takeoff.json')))
})

test('the same is asked of both households as when it was kept', () => {
  const statement = statementOf(notebook)
  if (!statement.ok) throw new Error(JSON.stringify(statement.faults))
  expect(JSON.parse(JSON.stringify(statementFile(statement.value)))).toEqual(
    JSON.parse(kept('statement.json')),
  )
})

test('it holds every key that a take-off may read, each with something in it somewhere', () => {
  const typed = filledKeys(document)
  // As it was read, with every key and its default.
  const { line, sections, gates, buildUps, inventory } = notebook
  const known = filledKeys({ line, buildUps, inventory }, true)
  for (const item of [...sections, ...gates]) filledKeys({ buildUp: item.buildUp }, true, known)
  for (const section of sections) filledKeys({ measured: section.measured }, true, known)
  expect(known.size).toBeGreaterThan(80)
  expect([...known].filter((key) => !typed.has(key))).toEqual([])
})

/** Names of all keys within; those with nothing in them only where `empty`. */
function filledKeys(value: unknown, empty = false, into = new Set<string>()): Set<string> {
  if (value === null || typeof value !== 'object') return into
  for (const [key, entry] of Object.entries(value)) {
    if (!Array.isArray(value) && (empty || (entry !== '' && entry !== undefined))) into.add(key)
    filledKeys(entry, empty, into)
  }
  return into
}
