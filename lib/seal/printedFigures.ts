import type { Notebook } from '../core/agreement/notebook.ts'
import type { RecordProblem } from '../core/agreement/recordFindings.ts'
import { held } from '../core/result.ts'
import type { Statement } from '../core/shares/statement.ts'
import { accountHashLabel } from '../words/account/accountPaperWords.ts'
import { paperWords } from '../words/summary/paperWords.ts'
import { shareBlocks } from '../words/summary/shareBlocks.ts'
import type { PrintedPiece } from './printedText.ts'

const hashLineAfter = (label: string) => new RegExp(`^${label.replaceAll('.', '\\.')}: ([0-9a-f]{64})$`)
const agreementHashLine = hashLineAfter(paperWords.hashLabel)
const accountHashLine = hashLineAfter(accountHashLabel)

/** The hash that a page prints at its foot: the lowest line of that form, since a note further up may read like one. */
function printedHash(page: readonly PrintedPiece[], hashLine: RegExp): string | undefined {
  const lines = page.flatMap(({ text, y }) => {
    const hash = hashLine.exec(text)?.[1]
    return hash === undefined ? [] : [{ hash, y }]
  })
  return lines.reduce(
    (lowest, line) => (line.y < lowest.y ? line : lowest),
    lines[0] ?? { hash: undefined, y: 0 },
  ).hash
}

/** Holds the hash at the foot of every page against that of the notebook file. */
export function printedHashes(
  pages: readonly (readonly PrintedPiece[])[],
  found: string | undefined,
): { readonly printedSha256?: string; readonly problems: readonly RecordProblem[] } {
  const hashes = pages.map((page) => printedHash(page, agreementHashLine))
  const without = hashes.indexOf(undefined)
  if (without >= 0) return { problems: [{ kind: 'hash-not-printed', page: without + 1 }] }
  const [first = ''] = hashes
  const expected = found ?? first
  const other = hashes.findIndex((hash) => hash !== expected)
  const printed = hashes.every((hash) => hash === first) ? { printedSha256: first } : {}
  if (other < 0) return { ...printed, problems: [] }
  return {
    ...printed,
    problems: [{ kind: 'hash-differs', page: other + 1, printed: hashes[other] ?? '', found: expected }],
  }
}

/** The hash of the final account whose paper this is: what every page prints at its foot; undefined for any other paper. */
export function printedAccountHash(pages: readonly (readonly PrintedPiece[])[]): string | undefined {
  const [first, ...others] = pages.map((page) => printedHash(page, accountHashLine))
  return others.every((hash) => hash === first) ? first : undefined
}

/** Whether the pages print the sums that each household is asked for as they are worked out here. */
export function sumsArePrinted(
  pages: readonly (readonly PrintedPiece[])[],
  notebook: Notebook,
  statement: Statement,
): boolean {
  const blocks = shareBlocks({
    notebook,
    statement: held(statement),
    standing: { kind: 'draft', sha256: '' },
    signatures: [],
  })
  const tables = blocks.filter((block) => block.kind === 'table')
  const row = tables.at(-1)?.rows[0]?.cells
  const text = plain(pages.flatMap((page) => page.map((piece) => piece.text)).join(' '))
  return row !== undefined && text.includes(plain(row.join(' ')))
}

function plain(text: string): string {
  return text.replace(/\s+/g, ' ').trim()
}
