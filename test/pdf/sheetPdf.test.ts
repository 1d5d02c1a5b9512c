import { PDFDocument } from 'pdf-lib'
import { describe, expect, test } from 'vitest'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { takeOff } from '../../lib/core/takeoff/takeOff.ts'
import { printFonts } from '../../lib/files/printFonts.ts'
import { exampleDocument } from '../../lib/forms/exampleNotebook.ts'
import { readNotebook } from '../../lib/forms/readNotebook.ts'
import { sheetPdf } from '../../lib/pdf/sheetPdf.ts'
import { buyerSheet } from '../../lib/words/sheets/buyerSheet.ts'
import { landRecordsPage } from '../../lib/words/sheets/landRecordsPage.ts'
import { permitSheet } from '../../lib/words/sheets/permitSheet.ts'
import type { SheetBlock } from '../../lib/words/sheets/sheetBlock.ts'

const read = readNotebook(JSON.stringify(exampleDocument()))
if (!read.ok) throw new Error('the example holds')
const { notebook } = read.value
const standing = {
  kind: 'signed',
  number: 1,
  sha256: '0'.repeat(64),
  frozenAt: new Date('2027-04-01T10:00:00Z'),
} as const
const summary = { notebook, statement: statementOf(notebook), standing, signatures: [] }

async function made(content: readonly SheetBlock[], units: 'ft-in' | 'metric' = 'ft-in') {
  const input = { title: notebook.title, units, content, standing, fonts: printFonts() }
  const bytes = await sheetPdf(input)
  expect(Buffer.from(await sheetPdf(input)).equals(Buffer.from(bytes))).toBe(true)
  const document = await PDFDocument.load(bytes)
  return document.getPages().map((page) => page.getSize())
}

describe('a sheet', () => {
  test.each([
    ['for a permit office', permitSheet(summary, takeOff(notebook))],
    ['for a later buyer', buyerSheet(summary, takeOff(notebook))],
    ['for the land records', landRecordsPage(summary)],
  ])('%s is one page of the usual size for the example', async (_what, content) => {
    const [page, ...others] = await made(content)
    expect(others).toEqual([])
    expect(page?.width).toBeCloseTo(612, 6)
    expect(page?.height).toBeCloseTo(792, 6)
  })

  test('that would run over a little is printed smaller, on paper of the same size', async () => {
    const content = permitSheet(summary, takeOff(notebook))
    const more = [...content, ...content.slice(-1), ...content.slice(-1), ...content.slice(-1)]
    const [page, ...others] = await made(more, 'metric')
    expect(others).toEqual([])
    expect(page?.width).toBeCloseTo(595.28, 2)
    expect(page?.height).toBeCloseTo(841.89, 2)
  })

  test('that no reduction fits goes on over further pages, at full size', async () => {
    const content = permitSheet(summary, takeOff(notebook))
    const pages = await made(Array.from({ length: 5 }, () => content).flat())
    expect(pages.length).toBeGreaterThan(2)
    expect(new Set(pages.map(({ width }) => width))).toEqual(new Set([612]))
  })
})
