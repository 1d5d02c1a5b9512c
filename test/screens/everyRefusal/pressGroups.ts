import { accountRefusals } from './accountRefusals.ts'
import { bookRefusals } from './bookRefusals.ts'
import { booksRefusals } from './booksRefusals.ts'
import { proposalRefusals } from './proposalRefusals.ts'
import type { RefusalGroup } from './refusalRow.ts'
import { putUpRefusals, signingRefusals } from './signingRefusals.ts'

/** What presses refuse: in the books, of proposals, signatures, messages, links and files. */
export const pressGroups: readonly RefusalGroup[] = [
  booksRefusals,
  bookRefusals,
  putUpRefusals,
  signingRefusals,
  accountRefusals,
  proposalRefusals,
]
