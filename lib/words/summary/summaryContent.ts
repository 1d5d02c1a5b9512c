import { agreedTextBlocks } from './agreedTextBlocks.ts'
import type { Block } from './block.ts'
import { booksBlocks } from './booksBlocks.ts'
import { buildBlocks } from './buildBlocks.ts'
import { cautionBlocks } from './cautionBlocks.ts'
import { costBlocks } from './costBlocks.ts'
import { lineBlocks } from './lineBlocks.ts'
import { openingBlocks } from './openingBlocks.ts'
import { shareBlocks } from './shareBlocks.ts'
import { signatureBlocks } from './signatureBlocks.ts'
import type { SummaryInput } from './summaryInput.ts'

/**
 * The whole summary in plain language, in reading order. Never throws on a notebook that was read: what is missing is
 * said to be missing, and where the statement is refused the shares chapter says which share can't be worked out and why.
 */
export function summaryContent(input: SummaryInput): Block[] {
  return [
    ...openingBlocks(input),
    ...lineBlocks(input.notebook),
    ...buildBlocks(input.notebook),
    ...costBlocks(input),
    ...shareBlocks(input),
    ...booksBlocks(input),
    ...agreedTextBlocks(input.notebook),
    ...cautionBlocks(input.notebook),
    ...signatureBlocks(input),
  ]
}
