import { agreedItems, itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { ProposalRefusal } from '../../../lib/core/agreement/proposalRefusal.ts'
import { type Household, otherHousehold } from '../../../lib/core/people/household.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { acceptProposal, type Taken } from '../../../lib/store/acceptance.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import type { Mark } from '../../../lib/store/marks.ts'
import type { ProposedItem } from '../../../lib/store/proposals.ts'
import { capsNow } from './capsNow.ts'
import { closedByNumber } from './closed.ts'
import { itemChanges } from './itemChanges.ts'
import { knownToProposer, shownPrint } from './proposalSeen.ts'
import { isFitting, proposedNow } from './proposedNow.ts'
import { proposalRefusal, proposedPlan } from './proposedPlan.ts'

/**
 * Accepts a proposal: what it proposes goes into the plan, onto its items as they are.
 *
 * @param shown its items as the household has them before it (`shownPrint`): as anything else they are not accepted
 */
export async function accept(
  notebookId: string,
  household: Household,
  id: number,
  shown: string,
): Promise<{ readonly accepted: number } | { readonly refused: ProposalRefusal }> {
  const closed = await closedByNumber(notebookId)
  if (closed !== undefined) return { refused: { kind: 'closed', revision: closed } }
  const caps = await capsNow(notebookId)
  const outcome = await acceptProposal<ProposalRefusal>({
    notebookId,
    household,
    id,
    at: new Date(),
    take: (stored, items, marks) =>
      taken(JSON.parse(stored) as NotebookDocument, items, {
        caps,
        shown,
        accepts: household,
        proposerMarked: marks.filter((mark) => mark.household !== household),
      }),
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

/**
 * What is taken into the plan. The accepting household's mark is set on each of its items. The proposer's is where it knew
 * the item: as it had it before it when it proposed, or as it has marked it since. What somebody changed meanwhile it marks itself.
 */
function taken(
  document: NotebookDocument,
  items: readonly ProposedItem[],
  by: {
    readonly caps: Notebook['caps']
    readonly shown: string
    readonly accepts: Household
    readonly proposerMarked: readonly Mark[]
  },
): Taken | { readonly refused: ProposalRefusal } {
  if (shownPrint(document, items) !== by.shown) return { refused: { kind: 'shown otherwise' } }
  const refusal = proposalRefusal(document, items, by.caps)
  if (refusal !== undefined) return { refused: refusal }
  const fitting = items.map((item) => proposedNow(document, item)).filter(isFitting)
  const plan = proposedPlan(document, fitting, by.caps)
  if (!plan.ok) return { refused: { kind: 'does not hold', faults: plan.faults } }
  const { document: next, text } = plan.value
  const known = new Set([...knownToProposer(document, items, by.proposerMarked)].map(itemKey))
  const keys = new Set(fitting.map(({ id }) => itemKey(id)))
  const marks = agreedItems(next)
    .filter(({ key }) => keys.has(key))
    .map(({ key, inputs }) => ({
      itemKey: key,
      fingerprint: fingerprintOf(inputs),
      households: known.has(key) ? [otherHousehold(by.accepts), by.accepts] : [by.accepts],
    }))
  return { document: text, changed: itemChanges(document, next), marks }
}
