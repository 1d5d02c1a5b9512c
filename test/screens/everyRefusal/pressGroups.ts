import { accountRefusals } from './accountRefusals.ts'
import { bookRefusals } from './bookRefusals.ts'
import { booksRefusals } from './booksRefusals.ts'
import { proposalRefusals } from './proposalRefusals.ts'
import type { RefusalGroup } from './refusalRow.ts'
import { putUpRefusals, signingRefusals } from './signingRefusals.ts'

/**
 * What presses refuse: in the books, of proposals, signatures, messages, links and files.
 *
 * Still to come here: marks and removals of items, putting back, messages, readers' links, links of households, photos and
 * papers, entries of the book, hours and conversions, things.
 */
export const pressGroups: readonly RefusalGroup[] = [
  booksRefusals,
  bookRefusals,
  putUpRefusals,
  signingRefusals,
  accountRefusals,
  proposalRefusals,
]
