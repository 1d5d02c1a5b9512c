import fc from 'fast-check'
import { expect, test } from 'vitest'
import { statementOf } from '../../../lib/core/shares/statement.ts'
import { statementFile } from '../../../lib/core/shares/statementFile.ts'
import { takeOff } from '../../../lib/core/takeoff/takeOff.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { takeOffFile } from '../../../lib/words/takeoff/takeOffFile.ts'
import { randomNotebook, readMade } from '../randomNotebook.ts'
import { withHouseholdsSwapped } from '../swappedHouseholds.ts'

function statementText(document: NotebookDocument): string {
  const statement = statementOf(readMade(document))
  if (!statement.ok) throw new Error(JSON.stringify(statement.faults))
  return JSON.stringify(statementFile(statement.value))
}

/** The same notebook with nothing in it that a take-off reads. */
function bare(document: NotebookDocument): NotebookDocument {
  const read = ['from', 'to', 'at', 'opening', 'opens', 'height', 'buildUp', 'measured']
  const without = (items: unknown) =>
    (items as Record<string, unknown>[]).map((item) =>
      Object.fromEntries(Object.entries(item).filter(([key]) => !read.includes(key))),
    )
  return {
    ...document,
    line: {},
    sections: without(document.sections),
    gates: without(document.gates),
    inventory: [],
    buildUps: [],
  }
}

/** The field at a path such as `sections[0].buildUp.posts.hole` in the notebook with its defaults. */
function fieldAt(notebook: unknown, path: string): unknown {
  return path
    .split(/[.[\]]+/)
    .filter((key) => key !== '')
    .reduce<unknown>((value, key) => (value as Record<string, unknown> | undefined)?.[key], notebook)
}

const made = fc.sample(randomNotebook, { numRuns: 300, seed: 5 })

test('whatever a file may hold can be taken off, and comes out in figures and sentences', () => {
  fc.assert(
    fc.property(randomNotebook, (document) => {
      const notebook = readMade(document)
      const file = takeOffFile(notebook, takeOff(notebook))
      expect(JSON.stringify(file)).not.toMatch(/NaN|Infinity|undefined|\[object/)
      for (const { quantity, part } of file.quantities)
        expect(quantity, part).toMatch(/^[0-9]+(\.[0-9]{1,3})?$/)
      for (const { text, path } of file.findings) expect(text, path).toMatch(/^\S.+\.$/)
    }),
    { numRuns: 300 },
  )
})

test('each finding names a field or an item that is there', () => {
  fc.assert(
    fc.property(randomNotebook, (document) => {
      const notebook = readMade(document)
      for (const { path } of takeOff(notebook).findings) {
        // A part that is left out whole has no field yet: its item has.
        const item = /^(sections|gates)\[[0-9]+\]|^line/.exec(path)?.[0] ?? ''
        expect(fieldAt(notebook, item), path).toBeDefined()
      }
    }),
    { numRuns: 200 },
  )
})

test('the statement of shares never looks at what the take-off reads', () => {
  fc.assert(
    fc.property(randomNotebook, (document) => {
      expect(statementText(document)).toBe(statementText(bare(document)))
    }),
    { numRuns: 200 },
  )
})

test('with the households swapped the same is taken off', () => {
  fc.assert(
    fc.property(randomNotebook, (document) => {
      const [one, other] = [document, withHouseholdsSwapped(document)].map((each) => takeOff(readMade(each)))
      const figures = (found: typeof one) =>
        found?.quantities.map(({ part, quantity, unit }) => `${part} ${quantity} ${unit}`)
      expect(figures(other)).toEqual(figures(one))
    }),
    { numRuns: 200 },
  )
})

test('random notebooks meet every kind of post, every part, and nearly every finding', () => {
  const found = made.map((document) => takeOff(readMade(document)))
  const kinds = new Set(found.flatMap(({ posts }) => posts.map(({ post }) => post.kind)))
  expect([...kinds].sort()).toEqual(['brace', 'corner', 'end', 'gate', 'line'])
  const names = new Set(found.flatMap(({ quantities }) => quantities.map(({ name }) => name.kind)))
  for (const name of ['posts', 'rails', 'roll', 'panel', 'board', 'ties', 'concrete', 'gravel', 'caps'])
    expect(names).toContain(name)
  const findings = new Set(found.flatMap(({ findings }) => findings.map(({ kind }) => kind)))
  expect(findings.size).toBeGreaterThan(20)
})
