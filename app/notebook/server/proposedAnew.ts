import { readPart } from '../../../lib/forms/parts.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import type { Proposal, ProposedItem } from '../../../lib/store/proposals.ts'
import { sinceProposed } from './proposedPlan.ts'

/**
 * A proposal on the items as they are now. One that was changed since takes over only how it was to be shared; one that is
 * gone is left out.
 */
export function proposedAnew(document: NotebookDocument, proposal: Proposal): readonly ProposedItem[] {
  return proposal.items.flatMap((proposed) => {
    const now = readPart(document, { part: 'item', id: proposed.id })
    if (now === undefined) return []
    if (sinceProposed(document, proposed) === 'as it was') return [proposed]
    const { share, spread } = proposed.item
    const item = { ...now, share, ...(spread === undefined ? {} : { spread }) }
    return [{ id: proposed.id, fingerprint: fingerprintOf(now), item }]
  })
}
