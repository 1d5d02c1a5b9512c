import { accountRefusals } from './accountRefusals.ts'
import { bookRefusals } from './bookRefusals.ts'
import { booksRefusals } from './booksRefusals.ts'
import { itemRefusals } from './itemRefusals.ts'
import { keptFileRefusals } from './keptFileRefusals.ts'
import { linkRefusals } from './linkRefusals.ts'
import { proposalRefusals } from './proposalRefusals.ts'
import type { RefusalGroup } from './refusalRow.ts'
import { saidRefusals } from './saidRefusals.ts'
import { sentFileRefusals } from './sentFileRefusals.ts'
import { putUpRefusals, signingRefusals } from './signingRefusals.ts'

/** What presses refuse: in the books, at items, of proposals, signatures, messages, links and files. */
export const pressGroups: readonly RefusalGroup[] = [
  booksRefusals,
  bookRefusals,
  itemRefusals,
  putUpRefusals,
  signingRefusals,
  accountRefusals,
  proposalRefusals,
  saidRefusals,
  linkRefusals,
  sentFileRefusals,
  keptFileRefusals,
]
