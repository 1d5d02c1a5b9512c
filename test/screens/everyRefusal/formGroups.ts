import { agreedRefusals } from './agreedRefusals.ts'
import { beginningRefusals } from './beginningRefusals.ts'
import { buildUpRefusals } from './buildUpRefusals.ts'
import { closedRefusals } from './closedRefusals.ts'
import { failureRefusals } from './failureRefusals.ts'
import { fileTextRefusals } from './fileTextRefusals.ts'
import { letterRefusals } from './letterRefusals.ts'
import type { RefusalGroup } from './refusalRow.ts'
import { saidApartRefusals } from './saidApartRefusals.ts'
import { valueRefusals } from './valueRefusals.ts'

/** What forms and files refuse. */
export const formGroups: readonly RefusalGroup[] = [
  beginningRefusals,
  valueRefusals,
  fileTextRefusals,
  saidApartRefusals,
  letterRefusals,
  agreedRefusals,
  closedRefusals,
  buildUpRefusals,
  failureRefusals,
]
