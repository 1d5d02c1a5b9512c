import { type AgreedItem, agreedItems, itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import { withProposedItems } from '../../../lib/forms/proposedItems.ts'
import { isObject, type NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import type { Mark } from '../../../lib/store/marks.ts'
import type { ProposedItem } from '../../../lib/store/proposals.ts'
import { isFitting, proposedNow } from './proposedNow.ts'

/** What a mark stands for on the item of a proposal: as it stands, and with all that is proposed; undefined where it can't be taken over. */
type Sight = { readonly id: string; readonly now: unknown; readonly after: unknown }

function sights(document: NotebookDocument, items: readonly ProposedItem[]): readonly Sight[] {
  const found = items.map((item) => proposedNow(document, item))
  const now = inputsByKey(agreedItems(document))
  const after = inputsByKey(agreedItems(withProposedItems(document, found.filter(isFitting))))
  return found.map((one) => ({
    id: one.id,
    now: now.get(itemKey(one.id)),
    after: isFitting(one) ? after.get(itemKey(one.id)) : undefined,
  }))
}

/** One item as it is seen by who reads a proposal for it: the price, but also its currency and what it came to in the books. */
function sightPrint({ now, after }: Sight): string {
  return fingerprintOf({ now: now ?? null, after: after ?? null })
}

/** The items of a proposal as a page shows them: a press on a page that shows something else is about something else. */
export function shownPrint(document: NotebookDocument, items: readonly ProposedItem[]): string {
  return fingerprintOf(sights(document, items).map((one) => [one.id, sightPrint(one)]))
}

/** The items with what the household that proposes them has before it, where that is the document as it stands. */
export function withSeen(document: NotebookDocument, items: readonly ProposedItem[]): ProposedItem[] {
  const prints = new Map(sights(document, items).map((one) => [one.id, sightPrint(one)]))
  return items.map((item) => {
    const seen = prints.get(item.id)
    return seen === undefined ? item : { ...item, seen }
  })
}

/**
 * The ids of the items that the household which proposed them knows as they are now: nothing that a mark stands for has
 * changed since it proposed, or it has marked the item since. Where it is not known what it saw, only a mark tells.
 */
export function knownToProposer(
  document: NotebookDocument,
  items: readonly ProposedItem[],
  proposerMarked: readonly Pick<Mark, 'itemKey' | 'fingerprint'>[],
): ReadonlySet<string> {
  const seenById = new Map(items.map(({ id, seen }) => [id, seen]))
  const hasMarked = ({ id, now, after }: Sight) =>
    now !== undefined &&
    // A plan made smaller can take the item beyond the tolerance at a cost that no mark is for yet.
    (costOf(after) === undefined || costOf(after) === costOf(now)) &&
    proposerMarked.some((mark) => mark.itemKey === itemKey(id) && mark.fingerprint === fingerprintOf(now))
  const known = sights(document, items).filter(
    (one) => seenById.get(one.id) === sightPrint(one) || hasMarked(one),
  )
  return new Set(known.map(({ id }) => id))
}

function costOf(inputs: unknown): unknown {
  return isObject(inputs) ? inputs.beyondTolerance : undefined
}

function inputsByKey(items: readonly AgreedItem[]): ReadonlyMap<string, unknown> {
  return new Map(items.map(({ key, inputs }) => [key, inputs]))
}
