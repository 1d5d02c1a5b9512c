import { statementOf } from '../core/shares/statement.ts'
import { statementFile } from '../core/shares/statementFile.ts'
import { readNotebookFile, stopWithFaults } from './readFile.ts'

const [file, ...more] = process.argv.slice(2)
if (file === undefined || more.length > 0) {
  process.stderr.write('(file): Name one notebook file: npm run -s statement -- FILE\n')
  process.exit(1)
}
const read = readNotebookFile(file)
if (!read.ok) stopWithFaults(read.faults)
const statement = statementOf(read.value.notebook)
if (!statement.ok) stopWithFaults(statement.faults)
process.stdout.write(`${JSON.stringify(statementFile(statement.value), null, 2)}\n`)
