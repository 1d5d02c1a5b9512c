import type { Notebook } from '../core/agreement/notebook.ts'
import { signingParties } from '../core/agreement/revision.ts'
import { momentWords } from '../words/day.ts'
import { notebookTitle } from '../words/labels.ts'
import type { Block } from '../words/summary/block.ts'
import { householdStart } from '../words/summary/names.ts'
import { inkWords } from '../words/summary/paperWords.ts'
import { capacityName } from '../words/summary/signatureBlocks.ts'
import type { Standing } from '../words/summary/summaryInput.ts'
import { blockPieces } from './blockPieces.ts'
import { type Faces, facesOf } from './faces.ts'
import { furnitureMarks } from './furniture.ts'
import { bytesOf, makeDocument } from './makeDocument.ts'
import { box, type Mark, moved, rule, tagged } from './mark.ts'
import { columnHeight, columnWidth, type PageSize, pageSize } from './pageSize.ts'
import { type Piece, paginate } from './paginate.ts'
import type { PrintFonts } from './pdfInput.ts'
import { printableBlocks, printer } from './printable.ts'
import { patternMarks } from './signaturePieces.ts'
import type { StructureElement } from './structureElement.ts'
import { plainTitle } from './summaryPdf.ts'
import { linesOf, styles, textMark } from './textPieces.ts'

export type InkSigningInput = {
  /** The frozen notebook. */
  readonly notebook: Notebook
  readonly standing: Exclude<Standing, { readonly kind: 'draft' }>
  readonly madeAt?: Date
  readonly fonts: PrintFonts
}

/** A paper for signing one revision in ink, with room for every party and a witness or notary. Same input, same bytes. */
export async function inkSigningPdf({
  notebook,
  standing,
  madeAt,
  fonts,
}: InkSigningInput): Promise<Uint8Array> {
  const page = pageSize(notebook.units)
  const faces = facesOf(fonts)
  const print = printer(faces.canPrint)
  const title = print.text(inkWords.title(standing.number))
  const opening: Block[] = [
    {
      kind: 'title',
      text: inkWords.title(standing.number),
      standing: inkWords.frozen(momentWords(standing.frozenAt)),
    },
    { kind: 'paragraph', text: inkWords.lead(notebookTitle(notebook)) },
    { kind: 'paragraph', text: inkWords.hash(standing.number, standing.sha256) },
    { kind: 'paragraph', text: inkWords.care },
    ...(signingParties(notebook).length === 0
      ? [{ kind: 'paragraph' as const, text: inkWords.noParties }]
      : []),
  ]
  const nothing = {
    width: 1,
    height: 1,
    shapes: [],
    notes: [],
    parts: [],
    scale: { millimetresPerUnit: 0, setbacksDrawnWider: 1, heightsDrawnHigher: 1 },
  }
  const pieces = [
    ...printableBlocks(opening, print).flatMap((block) => blockPieces(block, nothing, faces, page)),
    ...signingParties(notebook).map((party) => {
      const who = `${print.text(party.name) || '—'}, ${capacityName(party.capacity)}`
      return placeToSign(
        who,
        print.text(householdStart(notebook, party.household)),
        party.household,
        faces,
        page,
      )
    }),
  ]
  const columns = paginate(pieces, columnHeight(page))
  const pages = columns.map((marks, index) => [
    ...marks.map((mark) => moved(mark, { x: page.left, y: page.top })),
    ...furnitureMarks({ title, standing }, faces, page, index + 1, columns.length),
  ])
  return bytesOf(await makeDocument(pages, page, { title: plainTitle(title), language: 'en', madeAt }, fonts))
}

const mostNameLines = 4

/** Rules to write on; each has its word under it. */
function placeToSign(who: string, household: string, side: 'a' | 'b', faces: Faces, page: PageSize): Piece {
  const width = columnWidth(page)
  const [left, right] = [20, width - 10]
  const half = (left + right) / 2
  // Names are in full on the agreement; here a name of more lines would leave no room to sign.
  const named = linesOf(who, right - left, styles.strong, faces).slice(0, mostNameLines)
  const housed = linesOf(household, right - left, styles.cell, faces).slice(0, 2)
  const place: StructureElement = { role: 'Sect' }
  const paragraph = (): StructureElement => ({ role: 'P', parent: place })
  const [nameTag, householdTag] = [paragraph(), paragraph()]
  let y = 8
  const texts: Mark[] = []
  for (const line of named) {
    texts.push(tagged(textMark(line, { x: left, y }, styles.strong), nameTag))
    y += styles.strong.lineHeight
  }
  for (const line of housed) {
    texts.push(tagged(textMark(line, { x: left, y }, styles.cell), householdTag))
    y += styles.cell.lineHeight
  }
  const field = (word: string, from: number, to: number, at: number): Mark[] => [
    rule({ x: from, y: at }, { x: to, y: at }, 'ink', 0.7),
    tagged(textMark(word, { x: from, y: at + 1 }, styles.small), paragraph()),
  ]
  const first = y + 42
  const second = first + 44
  const stampTop = second + 22
  const stampHeight = 62
  const height = stampTop + stampHeight + 8
  return {
    height,
    before: 12,
    keepWithNext: false,
    marks: [
      { kind: 'polygon', points: box(0, 0, width, height), stroke: { ink: 'rule', width: 0.8 } },
      ...patternMarks(side, height),
      ...texts,
      ...field(inkWords.signature, left, half - 8, first),
      ...field(inkWords.nameInPrint, half + 8, right, first),
      ...field(inkWords.date, left, half - 8, second),
      ...field(inkWords.place, half + 8, right, second),
      {
        kind: 'polygon',
        points: box(left, stampTop, right - left, stampHeight),
        stroke: { ink: 'rule', width: 0.7, dash: [3, 3] },
      },
      tagged(textMark(inkWords.witness, { x: left + 5, y: stampTop + 2 }, styles.small), paragraph()),
    ],
  }
}
