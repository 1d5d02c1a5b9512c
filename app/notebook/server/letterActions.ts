'use server'

import { openingAddress } from '../../../lib/access/address.ts'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { letterOverflow } from '../../../lib/pdf/letterPdf.ts'
import { issueInvitation } from '../../../lib/store/entryKeys.ts'
import { letterRefusals } from '../../../lib/words/letter/letterFaultText.ts'
import { letterText } from '../../../lib/words/letter/letterText.ts'
import { linkRefusals } from '../../../lib/words/linkText.ts'
import { letterPaper } from './letterOf.ts'
import { openNotebook } from './opened.ts'

/** A letter with the invitation that was made for it. The token is shown this once, and stored only as a hash. */
export type HandedOut = { readonly address: string; readonly token: string; readonly text: string }

/**
 * Makes a new invitation and the letter with it, for the first household alone. An earlier invitation ends only once the
 * new letter is sure to fit on its page.
 */
export async function inviteByLetter(notebookId: string): Promise<HandedOut | { readonly refused: string }> {
  const { household } = await requireHousehold(notebookId)
  if (household !== 'a') return { refused: linkRefusals.onlyFirstInvites }
  const opened = await openNotebook(notebookId)
  if (opened.notebook.letter === undefined) return { refused: letterRefusals.nothingWritten }
  const address = (token: string) => ({ kind: 'address', address: openingAddress(token) }) as const
  // Every token is as long as this one.
  const over = letterOverflow(letterPaper(opened, address('x'.repeat(43))))
  if (over) return { refused: letterRefusals.tooLong(over) }
  const issued = await issueInvitation({ notebookId, at: new Date() })
  if ('refused' in issued) return { refused: linkRefusals.nobodyLeft }
  const { letter } = letterPaper(opened, address(issued.token))
  return { address: openingAddress(issued.token), token: issued.token, text: letterText(letter) }
}
