import { expect, test } from 'vitest'
import { agreementText } from '../../lib/core/agreement/canonicalText.ts'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { printFonts } from '../../lib/files/printFonts.ts'
import { summaryPaper } from '../../lib/pdf/summaryPaper.ts'
import { heronBank } from '../drawing/madeFence.ts'
import { notebookWith, sha256Of } from './madeSummary.ts'
import { qpdfCheck } from './pdfTools.ts'
import { readPdf, wordsOf } from './readPdf.ts'

async function paperOf(more: Record<string, unknown>) {
  const { notebook, document } = notebookWith(more)
  const text = agreementText(document)
  const standing = { kind: 'draft', sha256: sha256Of(text) } as const
  const summary = { notebook, statement: statementOf(notebook), standing, signatures: [] }
  return summaryPaper(summary, text, printFonts())
}

test('the paper has the whole line, and each part with a build-up once more, larger, with its figures', async () => {
  const bytes = await paperOf(heronBank)
  const { pages } = await readPdf(bytes)
  const words = wordsOf(...pages).replaceAll('\u00A0', ' ')
  for (const head of [
    'Section 1, sheet 1 of 2',
    'Section 1, sheet 2 of 2',
    'Section 2, sheet 1 of 2',
    'Gate 1',
  ])
    expect(words).toContain(head)
  expect(words).not.toContain('Section 3, sheet')
  // A bay between measured posts, an opening, a hole dug less deep, a limit and who named it.
  for (const figure of ['3.036 m', '3 m clear', '0.6 m', 'Said by permit desk of Oldmere'])
    expect(words).toContain(figure)
  expect(await qpdfCheck(bytes)).toContain('No syntax or stream encoding errors found')
})

test('the paper of a line without a build-up has the whole line alone', async () => {
  const sections = heronBank.sections.map(({ buildUp: _, measured: __, ...section }) => section)
  const gates = heronBank.gates.map(({ buildUp: _, ...gate }) => gate)
  const { pages } = await readPdf(await paperOf({ ...heronBank, sections, gates }))
  const words = wordsOf(...pages).replaceAll('\u00A0', ' ')
  expect(words).toContain('From the side')
  expect(words).not.toMatch(/sheet \d of|line post|One post, to scale/)
})
