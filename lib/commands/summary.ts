import { createHash } from 'node:crypto'
import { writeFileSync } from 'node:fs'
import { agreementText } from '../core/agreement/canonicalText.ts'
import { statementOf } from '../core/shares/statement.ts'
import { lineDrawing } from '../drawing/lineDrawing.ts'
import { printFonts } from '../files/printFonts.ts'
import { drawingWidth } from '../pdf/pageSize.ts'
import { summaryPdf } from '../pdf/summaryPdf.ts'
import { notebookTitle } from '../words/labels.ts'
import { drawingWords } from '../words/summary/drawingWords.ts'
import { summaryContent } from '../words/summary/summaryContent.ts'
import { readNotebookFile, stopWithFaults } from './readFile.ts'

const [file, target, ...more] = process.argv.slice(2)
if (file === undefined || target === undefined || more.length > 0) {
  process.stderr.write('(file): Name a notebook file and the PDF to write: npm run -s summary -- FILE OUT.pdf\n')
  process.exit(1)
}
const read = readNotebookFile(file)
if (!read.ok) stopWithFaults(read.faults)
const { document, notebook } = read.value
const statement = statementOf(notebook)
if (!statement.ok) stopWithFaults(statement.faults)
const text = agreementText(document)
const standing = { kind: 'draft', sha256: createHash('sha256').update(text).digest('hex') } as const
// The reproducible-builds convention: seconds since 1970. Without it a draft carries no date, so that it is the same each time.
const epoch = process.env.SOURCE_DATE_EPOCH
if (epoch !== undefined && !/^[0-9]{1,12}$/.test(epoch)) {
  process.stderr.write('(file): SOURCE_DATE_EPOCH has to be a whole number of seconds.\n')
  process.exit(1)
}
const pdf = await summaryPdf({
  title: notebookTitle(notebook),
  language: 'en',
  units: notebook.units,
  content: summaryContent({ notebook, statement, standing, signatures: [] }),
  drawing: lineDrawing(notebook, { widthUnits: drawingWidth(notebook.units), words: drawingWords(notebook) }),
  standing,
  attachments: { agreementText: text, signatures: [] },
  ...(epoch === undefined ? {} : { madeAt: new Date(Number(epoch) * 1000) }),
  fonts: printFonts(),
})
try {
  writeFileSync(target, pdf)
} catch (error) {
  process.stderr.write(`(file): The PDF can't be written: ${error instanceof Error ? error.message : String(error)}\n`)
  process.exit(1)
}
