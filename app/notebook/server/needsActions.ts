'use server'

import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { sayNeedsApart } from '../../../lib/store/heldBack.ts'
import { needsKept } from '../../../lib/words/needText.ts'
import { pressRefusals } from '../../../lib/words/pressText.ts'
import type { SaveAnswer } from '../../ui/draft/saveAnswer.ts'
import { closedByNumber } from './closed.ts'
import { readDraft, refusedDraft } from './readDraft.ts'
import { typedNeeds } from './typedNeeds.ts'

/** Keeps what a household needs, apart from the document. Saying it again leaves the newest. */
export async function sayNeeds(notebookId: string, _base: string, draft: unknown): Promise<SaveAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = readDraft.safeParse(draft)
  if (!read.success) return refusedDraft
  const closed = await closedByNumber(notebookId)
  if (closed !== undefined) return { faults: [{ path: '', message: pressRefusals.closed(closed) }] }
  const { needs, faults } = typedNeeds(read.data)
  if (faults.length > 0) return { faults: [...faults] }
  await sayNeedsApart({ notebookId, household, content: JSON.stringify(needs), at: new Date() })
  return { saved: true, base: 'new', note: needsKept }
}
