import { readFileSync } from 'node:fs'
import fontkit from '@pdf-lib/fontkit'
import { PDFDocument } from 'pdf-lib'
import { agreementText } from '../../lib/core/agreement/canonicalText.ts'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { statementFile } from '../../lib/core/shares/statementFile.ts'
import { lineDrawing } from '../../lib/drawing/lineDrawing.ts'
import { printFonts } from '../../lib/files/printFonts.ts'
import { readNotebook } from '../../lib/forms/readNotebook.ts'
import { facesOf } from '../../lib/pdf/faces.ts'
import { layOut } from '../../lib/pdf/layOut.ts'
import { drawingWidth, pageSize } from '../../lib/pdf/pageSize.ts'
import { summaryPaper } from '../../lib/pdf/summaryPaper.ts'
import { sha256Hex } from '../../lib/store/sha256.ts'
import { notebookTitle } from '../../lib/words/labels.ts'
import { drawingWords } from '../../lib/words/summary/drawingWords.ts'
import { summaryContent } from '../../lib/words/summary/summaryContent.ts'
import { browserRows } from './browserBench.ts'
import { cuttingRows } from './cuttingBench.ts'
import { largeNotebook } from './largeNotebook.ts'
import { takeoffRows } from './takeoffBench.ts'

// npm run bench: every figure against its limit, as ratios of times measured in one run. Nothing here is a test: a busy
// machine is not a fault of the program. A figure over its limit is printed as such and makes the exit status 1.

type Row = { readonly what: string; readonly figure: number; readonly limit: number; readonly unit: string }

/** Median of some runs, in milliseconds of processor time: what other programs do in the meantime does not count. */
async function median(runs: number, work: () => unknown): Promise<number> {
  const times: number[] = []
  for (let run = 0; run < runs; run += 1) {
    const before = process.cpuUsage()
    await work()
    const spent = process.cpuUsage(before)
    times.push((spent.user + spent.system) / 1000)
  }
  return times.sort((left, right) => left - right)[Math.floor(runs / 2)] ?? Number.NaN
}

function statementFromText(text: string): string {
  const read = readNotebook(text)
  if (!read.ok) throw new Error('the large notebook holds')
  const statement = statementOf(read.value.notebook)
  if (!statement.ok) throw new Error('the large notebook has a statement')
  return JSON.stringify(statementFile(statement.value))
}

async function statementRows(): Promise<Row[]> {
  const [small, large] = [largeNotebook(10), largeNotebook(100)]
  statementFromText(small)
  const smallTime = await median(15, () => statementFromText(small))
  const largeTime = await median(7, () => statementFromText(large))
  const one = 'Statement of 1,000 sections, 100 gates and 20,000 cost lines, from the file’s text'
  return [
    { what: one, figure: largeTime, limit: 250, unit: 'ms of one core' },
    {
      what: 'The same against a tenth of the lines',
      figure: largeTime / smallTime,
      limit: 12,
      unit: 'times',
    },
  ]
}

async function paperRows(): Promise<Row[]> {
  const read = readNotebook(readFileSync(new URL('../../prisma/example/notebook.json', import.meta.url)))
  if (!read.ok) throw new Error('the example holds')
  const { document, notebook } = read.value
  const text = agreementText(document)
  const fonts = printFonts()
  const summary = {
    notebook,
    statement: statementOf(notebook),
    standing: { kind: 'draft', sha256: sha256Hex(text) } as const,
    signatures: [],
  }
  const whole = () => summaryPaper(summary, text, fonts)
  const page = pageSize(notebook.units)
  const drawing = lineDrawing(notebook, {
    widthUnits: drawingWidth(notebook.units),
    words: drawingWords(notebook),
  })
  const title = notebookTitle(notebook)
  const pages = layOut(
    summaryContent(summary),
    drawing,
    { title, standing: summary.standing },
    facesOf(fonts),
    page,
  )
  const runs = pages.map((marks) => marks.filter((mark) => mark.kind === 'text'))
  // The same text runs at the same places on the same pages, with nothing computed: what pdf-lib itself needs.
  const bare = async () => {
    const pdf = await PDFDocument.create({ updateMetadata: false })
    pdf.registerFontkit(fontkit)
    const options = { subset: true, features: { liga: false } }
    const faces = {
      regular: await pdf.embedFont(fonts.regular, options),
      semibold: await pdf.embedFont(fonts.semibold, options),
    }
    for (const texts of runs) {
      const sheet = pdf.addPage([page.width, page.height])
      for (const run of texts) {
        sheet.drawText(run.text, {
          x: run.at.x,
          y: page.height - run.at.y,
          size: run.size,
          font: faces[run.weight],
        })
      }
    }
    return pdf.save({ useObjectStreams: false })
  }
  await whole()
  await bare()
  const wholeTime = await median(7, whole)
  const bareTime = await median(7, bare)
  const count = runs.reduce((sum, texts) => sum + texts.length, 0)
  const what = `Summary PDF of the example (${pages.length} pages, ${count} text runs) against pdf-lib drawing the same runs`
  return [{ what, figure: wholeTime / bareTime, limit: 2, unit: 'times' }]
}

const rows = [
  ...(await statementRows()),
  ...(await takeoffRows(median)),
  ...(await cuttingRows()),
  ...(await paperRows()),
  ...(await browserRows()),
]
for (const { what, figure, limit, unit } of rows) {
  const verdict = figure <= limit ? 'within' : 'OVER'
  console.log(`${verdict.padEnd(7)} ${figure.toFixed(2)} ${unit} (limit ${limit}): ${what}`)
}
process.exitCode = rows.every(({ figure, limit }) => figure <= limit) ? 0 : 1
