import { canonicalText } from '../../../lib/core/agreement/canonicalText.ts'
import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { ProposalRefusal } from '../../../lib/core/agreement/proposalRefusal.ts'
import type { Fault } from '../../../lib/core/faults.ts'
import { held, type Result, refusedAll } from '../../../lib/core/result.ts'
import { plannedStatement } from '../../../lib/core/shares/statement.ts'
import { type ItemAsProposed, withProposedItems } from '../../../lib/forms/proposedItems.ts'
import { type NotebookDocument, type ReadNotebook, readDocument } from '../../../lib/forms/readNotebook.ts'
import { missingSources } from '../../../lib/forms/savingSources.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import type { ProposedItem } from '../../../lib/store/proposals.ts'
import { isFitting, proposedNow } from './proposedNow.ts'
import { toStore } from './toStore.ts'

/** A plan as it would be stored, and as its figures are worked out: with the caps that are in force. */
export type ProposedPlan = ReadNotebook & { readonly text: string; readonly inForce: Notebook }

/**
 * The plan with these items in it. Refused where the file would not hold, or where shares could not
 * be worked out that can be now: what stands in the way already is nobody's proposal.
 */
export function proposedPlan(
  document: NotebookDocument,
  items: readonly ItemAsProposed[],
  caps: Notebook['caps'],
): Result<ProposedPlan> {
  const stores = toStore(withProposedItems(document, items))
  if (!stores.ok) return stores
  const plan = held({ ...stores.value, inForce: { ...stores.value.notebook, caps } })
  const after = plannedStatement({ ...stores.value.notebook, caps })
  if (after.ok) return plan
  const now = readDocument(document)
  const before = now.ok ? plannedStatement({ ...now.value.notebook, caps }) : now
  const known = new Set(before.ok ? [] : before.faults.map((fault) => canonicalText(fault)))
  const brought = after.faults.filter((fault: Fault) => !known.has(canonicalText(fault)))
  return brought.length > 0 ? refusedAll(brought) : plan
}

/**
 * Why these items can't be proposed, or taken into the plan, as the document stands; undefined where they can. What was
 * changed in an item since does not stand in the way unless it is what is proposed.
 */
export function proposalRefusal(
  document: NotebookDocument,
  items: readonly ProposedItem[],
  caps: Notebook['caps'],
): ProposalRefusal | undefined {
  if (items.length === 0) return { kind: 'no items' }
  const found = items.map((item) => proposedNow(document, item))
  const gone = found.filter(({ since }) => since === 'gone')
  if (gone.length > 0) return { kind: 'items gone', items: gone.map(({ id }) => id) }
  const changed = found.filter((one) => one.since === 'changed')
  if (changed.length > 0) return { kind: 'items changed', items: changed }
  const fitting = found.filter(isFitting)
  if (fitting.every(({ now, item }) => fingerprintOf(item) === fingerprintOf(now)))
    return { kind: 'nothing proposed' }
  const sources = fitting.flatMap(({ id, now, item }) =>
    missingSources(now, item).map((path) => ({ item: id, path })),
  )
  if (sources.length > 0) return { kind: 'sources missing', at: sources }
  const plan = proposedPlan(document, fitting, caps)
  return plan.ok ? undefined : { kind: 'does not hold', faults: plan.faults }
}
