import fc from 'fast-check'
import { expect, test } from 'vitest'
import { agreedItems, changedItems } from '../../../lib/core/agreement/agreedItems.ts'
import { agreementText, canonicalText } from '../../../lib/core/agreement/canonicalText.ts'
import { statementOf } from '../../../lib/core/shares/statement.ts'
import { statementFile } from '../../../lib/core/shares/statementFile.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { randomNotebook, readMade } from '../randomNotebook.ts'

/** The same data with the keys of every object in another order. */
function reordered(value: unknown, step: number): unknown {
  if (Array.isArray(value)) return value.map((entry) => reordered(entry, step))
  if (value === null || typeof value !== 'object') return value
  const entries = Object.entries(value)
  const turn = entries.length === 0 ? 0 : step % entries.length
  const turned = [...entries.slice(turn), ...entries.slice(0, turn)]
  if (step % 2 === 0) turned.reverse()
  return Object.fromEntries(turned.map(([key, entry]) => [key, reordered(entry, step + 1)]))
}

const step = fc.integer({ min: 1, max: 50 })

function printed(document: NotebookDocument) {
  const statement = statementOf(readMade(document))
  if (!statement.ok) throw new Error('a made notebook has a statement')
  return JSON.stringify(statementFile(statement.value))
}

test('the order of keys changes neither the canonical text nor what is signed', () => {
  fc.assert(
    fc.property(randomNotebook, step, (document, step) => {
      const other = reordered(document, step) as NotebookDocument
      expect(canonicalText(other)).toBe(canonicalText(document))
      expect(agreementText(other)).toBe(agreementText(document))
      expect(changedItems(document, other)).toEqual([])
    }),
  )
})

test('the order of keys changes nothing in the statement', () => {
  fc.assert(
    fc.property(randomNotebook, step, (document, step) => {
      expect(printed(reordered(document, step) as NotebookDocument)).toBe(printed(document))
    }),
  )
})

test('canonical text reads back as the same data', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (data) => {
      const text = canonicalText(data)
      expect(canonicalText(JSON.parse(text))).toBe(text)
      expect(JSON.stringify(JSON.parse(text)).length).toBe(text.length)
    }),
  )
})

test('whatever is agreed on item by item is in what is signed', () => {
  fc.assert(
    fc.property(randomNotebook, (document) => {
      const signed = agreementText(document)
      for (const { inputs, kind } of agreedItems(document)) {
        const item = kind === 'section' || kind === 'gate' || kind === 'common'
        const data = item ? (inputs as { item: unknown }).item : inputs
        if (kind !== 'caps') expect(signed).toContain(canonicalText(data))
      }
    }),
  )
})
