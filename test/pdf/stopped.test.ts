import { expect, test } from 'vitest'
import { agreementText } from '../../lib/core/agreement/canonicalText.ts'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { printFonts } from '../../lib/files/printFonts.ts'
import { exampleDocument } from '../../lib/forms/exampleNotebook.ts'
import { readDocument } from '../../lib/forms/readNotebook.ts'
import { summaryPaper } from '../../lib/pdf/summaryPaper.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'

function paper(stop?: AbortSignal): Promise<Uint8Array> {
  const document = exampleDocument()
  const read = readDocument(document)
  if (!read.ok) throw new Error('The example holds.')
  const { notebook } = read.value
  const text = agreementText(document)
  const standing = { kind: 'draft', sha256: sha256Hex(text) } as const
  const summary = { notebook, statement: statementOf(notebook), standing, signatures: [] }
  return summaryPaper(summary, text, printFonts(), undefined, stop)
}

test('a paper that is stopped while it is made ends between two pages, and others have their turn meanwhile', async () => {
  const stop = new AbortController()
  let turns = 0
  const others = setInterval(() => {
    turns += 1
    stop.abort(new Error('nobody reads it any more'))
  }, 0)
  try {
    await expect(paper(stop.signal)).rejects.toThrow('nobody reads it any more')
    expect(turns).toBeGreaterThan(0)
  } finally {
    clearInterval(others)
  }
})

test('a paper that may be stopped and is not has the same bytes as any other', async () => {
  const [one, other] = [await paper(), await paper(new AbortController().signal)]
  expect(Buffer.from(one).equals(Buffer.from(other))).toBe(true)
})
