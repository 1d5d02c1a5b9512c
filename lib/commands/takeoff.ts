import { takeOff } from '../core/takeoff/takeOff.ts'
import { cutPlansFile } from '../cutting/cutPlansFile.ts'
import { takeOffFile } from '../words/takeoff/takeOffFile.ts'
import { readNotebookFile, stopWithFaults } from './readFile.ts'

const [file, ...more] = process.argv.slice(2)
if (file === undefined || more.length > 0) {
  process.stderr.write('(file): Name one notebook file: npm run -s takeoff -- FILE\n')
  process.exit(1)
}
const read = readNotebookFile(file)
if (!read.ok) stopWithFaults(read.faults)
const { notebook } = read.value
const found = takeOff(notebook)
const { posts, pieces, ...rest } = takeOffFile(notebook, found)
const cutPlans = await cutPlansFile(notebook, found)
process.stdout.write(`${JSON.stringify({ posts, pieces, cutPlans, ...rest }, null, 2)}\n`)
