import fc from 'fast-check'
import { expect, test } from 'vitest'
import { canonicalText } from '../../lib/core/agreement/canonicalText.ts'
import { documentText, inFormatOrder, type Part, readPart, writePart } from '../../lib/forms/parts.ts'
import { type NotebookDocument, readNotebook, unknownKeys } from '../../lib/forms/readNotebook.ts'
import { tidyDraft } from '../../lib/forms/tidyDraft.ts'
import { randomNotebook } from '../core/randomNotebook.ts'

/** A notebook with keys that the program does not know, in its items too. */
const withUnknownKeys = fc
  .tuple(
    randomNotebook,
    fc.dictionary(
      fc.string({ unit: 'grapheme' }).map((key) => `x${key}`),
      fc.jsonValue(),
      { maxKeys: 3 },
    ),
  )
  .map(([document, extra]): NotebookDocument => {
    const given = JSON.parse(JSON.stringify(extra)) as Record<string, unknown>
    const sections = (document.sections as Record<string, unknown>[]).map((item) => ({ ...item, ...given }))
    return { ...document, sections, ...given }
  })

function imported(text: string): NotebookDocument {
  const read = readNotebook(text)
  if (!read.ok) throw new Error(JSON.stringify(read.faults))
  return read.value.document
}

function partsOf(document: NotebookDocument): Part[] {
  const items = ['sections', 'gates', 'common'].flatMap((list) => document[list] as { id: string }[])
  return [
    ...(['heading', 'line', 'caps', 'terms', 'checks', 'decisions'] as const).map((part) => ({ part })),
    ...items.map(({ id }) => ({ part: 'item' as const, id })),
  ]
}

test('what is imported from an export is what was exported, to the letter', () => {
  fc.assert(
    fc.property(withUnknownKeys, (document) => {
      const text = documentText(document)
      expect(documentText(imported(text))).toBe(text)
      expect(imported(new TextDecoder().decode(new TextEncoder().encode(text)))).toEqual(document)
    }),
    { numRuns: 200 },
  )
})

test('keys that the program does not know come through, and are found', () => {
  fc.assert(
    fc.property(withUnknownKeys, (document) => {
      const found = unknownKeys(imported(documentText(document)))
      const unknown = Object.keys(document).filter((key) => key.startsWith('x'))
      expect(found.filter((path) => unknown.includes(path))).toHaveLength(unknown.length)
      expect(found).toHaveLength(unknown.length * (1 + (document.sections as unknown[]).length))
    }),
    { numRuns: 200 },
  )
})

test('a part that is looked at and saved unchanged leaves the document as it was, to the letter', () => {
  fc.assert(
    fc.property(withUnknownKeys, (made) => {
      const document = inFormatOrder(made)
      for (const part of partsOf(document)) {
        const draft = structuredClone(readPart(document, part)) ?? {}
        expect(documentText(writePart(document, part, draft))).toBe(documentText(document))
      }
    }),
    { numRuns: 150 },
  )
})

test('in whatever order the keys of a file stand, saving a part unchanged changes no digest', () => {
  fc.assert(
    fc.property(randomNotebook, (made) => {
      const document = Object.fromEntries(Object.entries(made).reverse())
      for (const part of partsOf(document)) {
        const written = writePart(document, part, structuredClone(readPart(document, part)) ?? {})
        expect(canonicalText(written)).toBe(canonicalText(document))
      }
    }),
    { numRuns: 150 },
  )
})

test('tidying data against itself changes nothing, and tidying twice is tidying once', () => {
  fc.assert(
    fc.property(fc.jsonValue(), (value) => {
      const data = JSON.parse(JSON.stringify(value)) as unknown
      expect(JSON.stringify(tidyDraft(data, data))).toBe(JSON.stringify(data))
      const tidy = tidyDraft(data, undefined)
      expect(JSON.stringify(tidyDraft(tidy, undefined))).toBe(JSON.stringify(tidy))
    }),
    { numRuns: 500 },
  )
})
