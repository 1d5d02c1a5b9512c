import { accountRefusals } from './accountRefusals.ts'
import { bookRefusals } from './bookRefusals.ts'
import { booksRefusals } from './booksRefusals.ts'
import { enteredRefusals } from './enteredRefusals.ts'
import { itemRefusals } from './itemRefusals.ts'
import { keptFileRefusals } from './keptFileRefusals.ts'
import { linkRefusals } from './linkRefusals.ts'
import { proposalRefusals } from './proposalRefusals.ts'
import type { RefusalGroup } from './refusalRow.ts'
import { replyRefusals } from './replyRefusals.ts'
import { saidRefusals } from './saidRefusals.ts'
import { sentFileRefusals } from './sentFileRefusals.ts'
import { putUpRefusals, signingRefusals } from './signingRefusals.ts'
import { writtenDownRefusals } from './writtenDownRefusals.ts'

/** What presses refuse: in the books, at items, of proposals, signatures, messages, links and files. */
export const pressGroups: readonly RefusalGroup[] = [
  booksRefusals,
  bookRefusals,
  enteredRefusals,
  writtenDownRefusals,
  itemRefusals,
  putUpRefusals,
  signingRefusals,
  accountRefusals,
  proposalRefusals,
  replyRefusals,
  saidRefusals,
  linkRefusals,
  sentFileRefusals,
  keptFileRefusals,
]
