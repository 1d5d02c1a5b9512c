import { readPart } from '../../../lib/forms/parts.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import type { Proposal, ProposedItem } from '../../../lib/store/proposals.ts'
import { withSeen } from './proposalSeen.ts'
import { isFitting, proposedNow } from './proposedNow.ts'

/**
 * A proposal on the items as they are now. Where what it proposes was itself changed since, it takes over only how the
 * item was to be shared; an item that is gone is left out, as long as another one stands.
 */
export function proposedAnew(document: NotebookDocument, proposal: Proposal): readonly ProposedItem[] {
  const anew = proposal.items.flatMap((proposed) => {
    const was = readPart(document, { part: 'item', id: proposed.id })
    if (was === undefined) return []
    const found = proposedNow(document, proposed)
    const { share, spread } = proposed.item
    const { spread: _laid, ...shared } = was
    const sharedAnew = { ...shared, share, ...(spread === undefined ? {} : { spread }) }
    const item = isFitting(found) ? found.item : sharedAnew
    return [{ id: proposed.id, fingerprint: fingerprintOf(was), was, item }]
  })
  // Where all of them are gone there is nothing to propose, and that is told of each.
  return withSeen(document, anew.length > 0 ? anew : proposal.items)
}
