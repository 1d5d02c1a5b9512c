import { createHash } from 'node:crypto'
import { readFileSync } from 'node:fs'
import { agreementText } from '../../lib/core/agreement/canonicalText.ts'
import type { Signature } from '../../lib/core/agreement/revision.ts'
import { statementOf } from '../../lib/core/shares/statement.ts'
import { lineDrawing } from '../../lib/drawing/lineDrawing.ts'
import { printFonts } from '../../lib/files/printFonts.ts'
import { type ReadNotebook, readDocument, readNotebook } from '../../lib/forms/readNotebook.ts'
import { drawingWidth } from '../../lib/pdf/pageSize.ts'
import type { SummaryPdfInput } from '../../lib/pdf/pdfInput.ts'
import { notebookTitle } from '../../lib/words/labels.ts'
import { drawingWords } from '../../lib/words/summary/drawingWords.ts'
import { summaryContent } from '../../lib/words/summary/summaryContent.ts'
import type { Standing } from '../../lib/words/summary/summaryInput.ts'

const exampleFile = new URL('../../prisma/example/notebook.json', import.meta.url)

/** The example that the program brings along. */
export function exampleNotebook(): ReadNotebook {
  return heldOrThrow(readNotebook(readFileSync(exampleFile)))
}

/** A notebook of the fewest keys and `more`. */
export function notebookWith(more: Record<string, unknown> = {}): ReadNotebook {
  const least = { format: 'mearing-notebook', version: 1, currency: 'USD', households: { a: {}, b: {} } }
  return heldOrThrow(readDocument({ ...least, ...more }))
}

function heldOrThrow(read: ReturnType<typeof readNotebook>): ReadNotebook {
  if (!read.ok) throw new Error(JSON.stringify(read.faults))
  return read.value
}

export function sha256Of(bytes: string | Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex')
}

type Asked = {
  readonly standing?: Partial<Standing> & { kind: Standing['kind'] }
  readonly signatures?: readonly Signature[]
}

/** Everything that a summary PDF is made of, from a notebook; a draft unless another standing is asked for. */
export function summaryInputFor(
  read: ReadNotebook,
  { standing, signatures = [] }: Asked = {},
): SummaryPdfInput & Required<Pick<SummaryPdfInput, 'attachments'>> {
  const { notebook, document } = read
  const text = agreementText(document)
  const sha256 = sha256Of(text)
  const frozen = { number: 3, frozenAt: new Date('2027-03-03T19:12:00Z'), sha256 }
  const stands: Standing =
    standing === undefined || standing.kind === 'draft'
      ? { kind: 'draft', sha256 }
      : { kind: standing.kind, ...frozen }
  return {
    title: notebookTitle(notebook),
    language: 'en',
    units: notebook.units,
    content: summaryContent({
      notebook,
      statement: statementOf(notebook),
      standing: stands,
      signatures,
      booksAsOf: '2027-04-03',
    }),
    drawing: lineDrawing(notebook, {
      widthUnits: drawingWidth(notebook.units),
      words: drawingWords(notebook),
      details: true,
    }),
    standing: stands,
    attachments: { agreementText: text, signatures },
    fonts: printFonts(),
  }
}

/** A signature of a party of the example. */
export function signatureOf(
  read: ReadNotebook,
  household: 'a' | 'b',
  partyIndex: number,
  drawing?: string,
): Signature {
  const party = read.notebook.households[household].parties[partyIndex]
  if (party === undefined) throw new Error('no such party')
  return {
    household,
    partyIndex,
    partyName: party.name,
    capacity: party.capacity,
    typedName: party.name,
    intent: 'I have read this revision and agree to it for myself.',
    ...(drawing === undefined ? {} : { drawing }),
    sha256: sha256Of(agreementText(read.document)),
    signedAt: new Date('2027-03-04T20:01:00Z'),
  }
}
