import { mayUseOldTube } from '../../core/agreement/oldTube.ts'
import { refused } from '../../core/result.ts'
import { agreedTextBlocks } from './agreedTextBlocks.ts'
import type { Block } from './block.ts'
import { buildBlocks } from './buildBlocks.ts'
import { cautionBlocks } from './cautionBlocks.ts'
import { closingBlocks } from './closingBlocks.ts'
import { datesBlocks } from './datesBlocks.ts'
import { lineBlocks } from './lineBlocks.ts'
import { madeOfBlocks } from './madeOfBlocks.ts'
import { openingBlocks } from './openingBlocks.ts'
import { placeBlocks } from './placeBlocks.ts'
import { signatureBlocks } from './signatureBlocks.ts'
import type { SummaryInput } from './summaryInput.ts'
import { takenOff } from './takenOff.ts'
import { notebookWithoutCosts } from './withoutCosts.ts'

/**
 * The summary for whoever is not to see costs, hours or shares, in reading order. Two doors are shut: only the chapters
 * named here are written, and they are given a notebook that holds no figure of money and no hours to write of.
 */
export function contentWithoutCosts({ standing, signatures, notebook: whole }: WithoutCosts): Block[] {
  const notebook = notebookWithoutCosts(whole)
  // No statement either: a chapter that asks for one hears that there is none, for no reason that it could print.
  const input: SummaryInput = { notebook, statement: refused(), standing, signatures }
  const found = takenOff(notebook)
  return [
    ...openingBlocks(input, 'without costs'),
    ...closingBlocks(input),
    ...lineBlocks(notebook),
    ...buildBlocks(notebook),
    ...placeBlocks(notebook, found),
    ...madeOfBlocks(notebook, found),
    ...agreedTextBlocks(notebook),
    ...datesBlocks(notebook),
    ...cautionBlocks(mayUseOldTube(whole), 'without costs'),
    ...signatureBlocks(input),
  ]
}

/** What such a summary is made from: nothing that was worked out. */
export type WithoutCosts = Pick<SummaryInput, 'notebook' | 'standing' | 'signatures'>
