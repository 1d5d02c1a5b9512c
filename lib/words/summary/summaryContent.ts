import { mayUseOldTube } from '../../core/agreement/oldTube.ts'
import { agreedTextBlocks } from './agreedTextBlocks.ts'
import { amendmentBlocks } from './amendmentBlocks.ts'
import { arrangementBlocks } from './arrangementBlocks.ts'
import type { Block } from './block.ts'
import { booksBlocks } from './booksBlocks.ts'
import { buildBlocks } from './buildBlocks.ts'
import { cautionBlocks } from './cautionBlocks.ts'
import { closingBlocks } from './closingBlocks.ts'
import { costBlocks } from './costBlocks.ts'
import { datesBlocks } from './datesBlocks.ts'
import { hoursBlocks } from './hoursBlocks.ts'
import { lineBlocks } from './lineBlocks.ts'
import { madeOfBlocks } from './madeOfBlocks.ts'
import { openingBlocks } from './openingBlocks.ts'
import { placeBlocks } from './placeBlocks.ts'
import { shareBlocks } from './shareBlocks.ts'
import { signatureBlocks } from './signatureBlocks.ts'
import { stepsBlocks } from './stepsBlocks.ts'
import type { SummaryInput } from './summaryInput.ts'
import { takenOff } from './takenOff.ts'

/**
 * The whole summary in plain language, in reading order. Never throws on a notebook that was read: what is missing is
 * said to be missing, and where the statement is refused the shares chapter says which share can't be worked out and why.
 */
export function summaryContent(input: SummaryInput): Block[] {
  const found = takenOff(input.notebook)
  return [
    ...openingBlocks(input),
    ...amendmentBlocks(input),
    ...closingBlocks(input),
    ...lineBlocks(input.notebook),
    ...buildBlocks(input.notebook),
    ...placeBlocks(input.notebook, found),
    ...madeOfBlocks(input.notebook, found),
    ...costBlocks(input, found),
    ...shareBlocks(input),
    ...arrangementBlocks(input.notebook),
    ...booksBlocks(input),
    ...hoursBlocks(input),
    ...agreedTextBlocks(input.notebook),
    ...datesBlocks(input.notebook),
    ...cautionBlocks(mayUseOldTube(input.notebook)),
    ...signatureBlocks(input),
    ...stepsBlocks(input),
  ]
}
