import { expect, test } from 'vitest'
import { PaperSheet } from '../../app/notebook/server/PaperSheet.tsx'
import { agreementText } from '../../lib/core/agreement/canonicalText.ts'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { printFonts } from '../../lib/files/printFonts.ts'
import { summaryPages, summaryPaper } from '../../lib/pdf/summaryPaper.ts'
import { shownMarkup } from '../shownMarkup.ts'
import { exampleNotebook, sha256Of } from './madeSummary.ts'
import { readPdf } from './readPdf.ts'

const letters = (texts: readonly string[]) => texts.join('').replace(/\s/g, '')

test('the pages on screen hold what the PDF’s pages hold, at the same places, page by page', async () => {
  const { notebook, document } = exampleNotebook()
  const text = agreementText(document)
  const summary = {
    notebook,
    statement: statementOf(notebook),
    standing: { kind: 'draft', sha256: sha256Of(text) } as const,
    signatures: [],
  }
  const { pages } = summaryPages(summary, printFonts())
  const pdf = await readPdf(await summaryPaper(summary, text, printFonts()))
  expect(pages.length).toBe(pdf.pages.length)
  expect(pages.length).toBeGreaterThan(5)
  for (const [index, marks] of pages.entries()) {
    const printed = pdf.pages[index]?.texts ?? []
    const shown = marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []))
    expect([...letters(shown.map((mark) => mark.text))].sort()).toEqual(
      [...letters(printed.map((one) => one.text))].sort(),
    )
    // A tenth of a point apart at most: both are written with few digits.
    const astray = printed.filter(
      ({ text, x, y }) =>
        text.trim() !== '' && !shown.some(({ at }) => Math.abs(at.x - x) < 0.1 && Math.abs(at.y - y) < 0.1),
    )
    expect(astray).toEqual([])
  }
}, 120_000)

test('a page on screen is one picture with a name, its text set as type', () => {
  const html = shownMarkup(
    <PaperSheet
      label="Page 1 of 2"
      page={{ width: 612, height: 792, left: 54, right: 558, top: 62, bottom: 738 }}
      marks={[
        { kind: 'text', text: '6 ft 2½ in', at: { x: 54, y: 80 }, size: 10, weight: 'semibold', ink: 'ink' },
        {
          kind: 'text',
          text: 'draft',
          at: { x: 100, y: 400 },
          size: 90,
          weight: 'regular',
          ink: 'faint',
          angle: 35,
        },
      ]}
    />,
  )
  expect(html).toContain('aria-label="Page 1 of 2"')
  expect(html).toContain('font-weight="600"')
  // Counter-clockwise on paper, where y counts up; a screen counts it down.
  expect(html).toContain('rotate(-35 100 400)')
})
