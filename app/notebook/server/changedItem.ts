import { itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import { readPart } from '../../../lib/forms/parts.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { changesOf } from '../../../lib/store/changes.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { type Difference, differences } from '../../../lib/words/differences.ts'
import { namesIn } from './namesIn.ts'

/**
 * What changed in an item since it had this fingerprint, from the record of edits; no rows where the record does not know
 * it, or where the item is gone.
 */
export async function changedSinceFingerprint(
  notebookId: string,
  document: NotebookDocument,
  id: string,
  fingerprint: string,
): Promise<readonly Difference[]> {
  const now = readPart(document, { part: 'item', id })
  if (now === undefined) return []
  const changes = await changesOf(notebookId, { itemKey: itemKey(id) })
  const then = changes
    .map(({ before }) => itemOf(before))
    .find((item) => item !== undefined && fingerprintOf(item) === fingerprint)
  return then === undefined ? [] : differences(then, now, { names: namesIn(document) })
}

/** The record keeps an item together with its currency. */
function itemOf(inputs: unknown): unknown {
  return inputs !== null && typeof inputs === 'object' && 'item' in inputs ? inputs.item : undefined
}
