import type { ProposalRefusal } from '../../../lib/core/agreement/proposalRefusal.ts'
import type { Household } from '../../../lib/core/people/household.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { type Made, makeProposal, type ProposedItem } from '../../../lib/store/proposals.ts'
import { longestReason } from '../../../lib/words/proposalText.ts'
import { capsNow } from './capsNow.ts'
import { closedByNumber } from './closed.ts'
import { proposalRefusal } from './proposedPlan.ts'

/**
 * Proposes items as they would be, in a household's name. The document is looked at in the transaction that writes: an item
 * that is not what its fingerprint says any more refuses the whole.
 *
 * @param items each item whole, with the fingerprint of the item part (`readPart`) as the household saw it
 * @param answers the id of the other household's standing proposal that this one answers
 */
export async function propose(
  notebookId: string,
  household: Household,
  items: readonly ProposedItem[],
  text: string,
  answers?: number,
): Promise<Made | { readonly refused: ProposalRefusal }> {
  if (text.length > longestReason)
    return { refused: { kind: 'too long', length: text.length, limit: longestReason } }
  const closed = await closedByNumber(notebookId)
  if (closed !== undefined) return { refused: { kind: 'closed', revision: closed } }
  const caps = await capsNow(notebookId)
  const made = await makeProposal<ProposalRefusal>({
    notebookId,
    household,
    items,
    text,
    ...(answers === undefined ? {} : { answers }),
    at: new Date(),
    refusal: (document) => proposalRefusal(JSON.parse(document) as NotebookDocument, items, caps),
  })
  if (made === 'no-such-proposal') return { refused: { kind: 'no such proposal' } }
  return made === 'ended' ? { refused: { kind: 'ended' } } : made
}
