import { agreedItems, itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { ProposalRefusal } from '../../../lib/core/agreement/proposalRefusal.ts'
import type { Household } from '../../../lib/core/people/household.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { acceptProposal, type Taken } from '../../../lib/store/acceptance.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import type { ProposedItem } from '../../../lib/store/proposals.ts'
import { capsNow } from './capsNow.ts'
import { closedByNumber } from './closed.ts'
import { itemChanges } from './itemChanges.ts'
import { proposalRefusal, proposedPlan } from './proposedPlan.ts'

/** Accepts a proposal: its items go into the plan as they were proposed, with both marks on them. */
export async function accept(
  notebookId: string,
  household: Household,
  id: number,
): Promise<{ readonly accepted: number } | { readonly refused: ProposalRefusal }> {
  const closed = await closedByNumber(notebookId)
  if (closed !== undefined) return { refused: { kind: 'closed', revision: closed } }
  const caps = await capsNow(notebookId)
  const outcome = await acceptProposal<ProposalRefusal>({
    notebookId,
    household,
    id,
    at: new Date(),
    take: (stored, items) => taken(JSON.parse(stored) as NotebookDocument, items, caps),
  })
  switch (outcome) {
    case 'no-such-proposal':
      return { refused: { kind: 'no such proposal' } }
    case 'own':
    case 'ended':
      return { refused: { kind: outcome } }
    default:
      return outcome
  }
}

function taken(
  document: NotebookDocument,
  items: readonly ProposedItem[],
  caps: Notebook['caps'],
): Taken | { readonly refused: ProposalRefusal } {
  const refusal = proposalRefusal(document, items, caps)
  if (refusal !== undefined) return { refused: refusal }
  const plan = proposedPlan(document, items, caps)
  if (!plan.ok) return { refused: { kind: 'does not hold', faults: plan.faults } }
  const { document: next, text } = plan.value
  const keys = new Set(items.map(({ id }) => itemKey(id)))
  const marks = agreedItems(next)
    .filter(({ key }) => keys.has(key))
    .map(({ key, inputs }) => ({ itemKey: key, fingerprint: fingerprintOf(inputs) }))
  return { document: text, changed: itemChanges(document, next), marks }
}
