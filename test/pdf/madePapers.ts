import { statementOf } from '../../lib/core/shares/statement.ts'
import { takeOff } from '../../lib/core/takeoff/takeOff.ts'
import { printFonts } from '../../lib/files/printFonts.ts'
import { inkSigningPdf } from '../../lib/pdf/inkSigningPdf.ts'
import { sheetPdf } from '../../lib/pdf/sheetPdf.ts'
import { summaryPdf } from '../../lib/pdf/summaryPdf.ts'
import { sealPdf } from '../../lib/seal/sealPdf.ts'
import { buyerSheet } from '../../lib/words/sheets/buyerSheet.ts'
import { landRecordsPage } from '../../lib/words/sheets/landRecordsPage.ts'
import { permitSheet } from '../../lib/words/sheets/permitSheet.ts'
import type { SheetBlock } from '../../lib/words/sheets/sheetBlock.ts'
import type { Block } from '../../lib/words/summary/block.ts'
import { allSignatures, oneKey, sealedAt } from '../seal/madeRecord.ts'
import { exampleNotebook, signatureOf, summaryInputFor } from './madeSummary.ts'

const example = exampleNotebook()
const { notebook } = example
const { title } = notebook
const sha256 = '0123456789abcdef'.repeat(4)
const standing = { kind: 'signed', number: 1, sha256, frozenAt: new Date('2027-04-01T10:00:00Z') } as const
const summary = { notebook, statement: statementOf(notebook), standing, signatures: [] }

/** Every party has signed; the first one drew its signature. */
const signatures = [signatureOf(example, 'a', 0, 'M10 10L590 190L300 20'), ...allSignatures(example).slice(1)]
export const signedExample = summaryInputFor(example, { standing: { kind: 'signed' }, signatures })

/** `blocks`: what the paper says, in the order in which it is to be read. */
export type Paper = { readonly bytes: Uint8Array; readonly title: string; readonly blocks: readonly Block[] }

const paragraph = (text: string): Block => ({ kind: 'paragraph', text })

async function sheet(content: readonly SheetBlock[]): Promise<Paper> {
  const bytes = await sheetPdf({ title, units: 'ft-in', content, standing, fonts: printFonts() })
  return {
    bytes,
    title,
    blocks: content.map((block) => (block.kind === 'room' ? paragraph(block.title) : block)),
  }
}

/** One of each kind of paper that the program makes, of the example. */
export const paperMakers: Readonly<Record<string, () => Promise<Paper>>> = {
  'the draft of the example': async () => {
    const input = summaryInputFor(example)
    return { bytes: await summaryPdf(input), title, blocks: input.content }
  },
  'a sealed copy': async () => {
    const bytes = await sealPdf(
      await summaryPdf({ ...signedExample, madeAt: sealedAt }),
      await oneKey(),
      sealedAt,
    )
    return { bytes, title, blocks: signedExample.content }
  },
  'a sheet for a permit office': () => sheet(permitSheet(summary, takeOff(notebook))),
  'a sheet for a later buyer': () => sheet(buyerSheet(summary, takeOff(notebook))),
  'a page for the land records': () => sheet(landRecordsPage(summary)),
  'the paper for signing in ink': async () => ({
    bytes: await inkSigningPdf({ notebook, standing, fonts: printFonts() }),
    title: 'Signing in ink: revision 1',
    blocks: [
      { kind: 'title', text: 'Signing in ink: revision 1', standing: 'Put up for signing on 1 April 2027' },
      ...['Marnie Oakshott, owner', 'No. 12', 'Signature', 'Name in print', 'Date', 'Place'].map(paragraph),
      ...['Witness or notary', 'Tobias Oakshott, co-owner', 'Signature', 'Ines Vandermolen'].map(paragraph),
    ],
  }),
}

/** Every text of a block that is read out, in order; a figure's is its description instead. */
export function textsOf(block: Block): readonly string[] {
  switch (block.kind) {
    case 'title':
      return [block.text, block.standing]
    case 'heading':
    case 'paragraph':
      return [block.text]
    case 'list':
      return block.items
    case 'table':
      return [
        block.caption,
        ...[block.columns.map((one) => one.title), ...block.rows.map((one) => one.cells)].flat(),
        ...(block.foot ?? []),
      ]
    case 'steps':
      return block.groups.flatMap(({ heading, steps }) => [heading, ...steps])
    case 'caution':
      return [block.title, block.text]
    case 'figure':
      return [block.caption]
    case 'drawing':
      return [block.caption, ...block.notes]
    case 'signature':
      return [
        block.party,
        `${block.householdName}, ${block.capacity}`,
        ...(block.state.kind === 'signed'
          ? [`Signed as: ${block.state.typedName}`, `“${block.state.intent}”`, block.state.when]
          : [block.state.text]),
      ]
  }
}
