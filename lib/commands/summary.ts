import { createHash } from 'node:crypto'
import { writeFileSync } from 'node:fs'
import { agreementText } from '../core/agreement/canonicalText.ts'
import { plannedStatement, statementOf } from '../core/shares/statement.ts'
import { printFonts } from '../files/printFonts.ts'
import { summaryPaper } from '../pdf/summaryPaper.ts'
import { readNotebookFile, stopWithFaults } from './readFile.ts'

const [file, target, ...more] = process.argv.slice(2)
if (file === undefined || target === undefined || more.length > 0) {
  process.stderr.write(
    '(file): Name a notebook file and the PDF to write: npm run -s summary -- FILE OUT.pdf\n',
  )
  process.exit(1)
}
const read = readNotebookFile(file)
if (!read.ok) stopWithFaults(read.faults)
const { document, notebook } = read.value
const statement = plannedStatement(notebook)
if (!statement.ok) stopWithFaults(statement.faults)
const text = agreementText(document)
const standing = { kind: 'draft', sha256: createHash('sha256').update(text).digest('hex') } as const
// The reproducible-builds convention: seconds since 1970. Without it a draft carries no date, so that it is the same each time.
const epoch = process.env.SOURCE_DATE_EPOCH
if (epoch !== undefined && !/^[0-9]{1,12}$/.test(epoch)) {
  process.stderr.write('(file): SOURCE_DATE_EPOCH has to be a whole number of seconds.\n')
  process.exit(1)
}
const madeAt = epoch === undefined ? undefined : new Date(Number(epoch) * 1000)
const actual = statementOf(notebook)
const summary = { notebook, statement, actual, standing, signatures: [] }
const pdf = await summaryPaper(summary, text, printFonts(), madeAt)
try {
  writeFileSync(target, pdf)
} catch (error) {
  process.stderr.write(
    `(file): The PDF can't be written: ${error instanceof Error ? error.message : String(error)}\n`,
  )
  process.exit(1)
}
