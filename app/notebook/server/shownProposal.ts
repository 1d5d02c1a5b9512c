import type { Result } from '../../../lib/core/result.ts'
import { type Distance, distanceBetween } from '../../../lib/core/shares/distance.ts'
import { placesOf } from '../../../lib/core/shares/itemShares.ts'
import { sharedUses } from '../../../lib/core/shares/passages.ts'
import { shareItems } from '../../../lib/core/shares/statement.ts'
import { readPart } from '../../../lib/forms/parts.ts'
import type { Proposal, ProposedItem } from '../../../lib/store/proposals.ts'
import { differences, differenceWords } from '../../../lib/words/differences.ts'
import { proposedChangeWords } from '../../../lib/words/proposalText.ts'
import { itemShareSentences, shareNames } from '../../../lib/words/shareText.ts'
import { changedSinceFingerprint } from './changedItem.ts'
import { itemTitles } from './itemTitles.ts'
import type { Opened } from './opened.ts'
import { proposedPlan, type SinceProposed, sinceProposed } from './proposedPlan.ts'

/** What a proposal has for one item, in words. */
export type ShownItem = {
  readonly id: string
  readonly title: string
  readonly since: SinceProposed
  /** What was changed in the item since. */
  readonly changed: readonly string[]
  /** How it would be shared; empty where that can't be worked out. */
  readonly shares: readonly { readonly pot: string; readonly sentence: string }[]
  /** What would be different in it, but for how it is shared where `shares` says that. */
  readonly differs: readonly string[]
}

export type ShownProposal = {
  readonly proposal: Proposal
  readonly items: readonly ShownItem[]
  /** From the plan as it stands to the plan with this in it; undefined where an item is no longer what it was. */
  readonly distance: Result<Distance> | undefined
}

export async function shownProposal(opened: Opened, proposal: Proposal): Promise<ShownProposal> {
  const { document, inForce, notebookId } = opened
  const titleOf = itemTitles(document)
  const fits = proposal.items.filter((item) => sinceProposed(document, item) === 'as it was')
  const plan = fits.length === proposal.items.length ? proposedPlan(document, fits, inForce.caps) : undefined
  const asked = plan?.ok ? shareItems(plan.value.notebook).items : []
  const places = plan?.ok ? placesOf(plan.value.notebook) : []
  const shownItem = async (item: ProposedItem): Promise<ShownItem> => {
    const { id, fingerprint } = item
    const now = readPart(document, { part: 'item', id })
    const changed = await changedSinceFingerprint(notebookId, document, id, fingerprint)
    const would = asked.find((one) => one.id === id)
    const place = places.find((one) => one.item.id === id)
    const names = shareNames(inForce, place && sharedUses(place.item))
    return {
      id,
      title: titleOf(id),
      since: sinceProposed(document, item),
      changed: changed.map(differenceWords),
      shares: would === undefined ? [] : itemShareSentences(would, names),
      differs: (now === undefined
        ? []
        : differences(withoutShare(now, would !== undefined), withoutShare(item.item, would !== undefined))
      ).map(proposedChangeWords),
    }
  }
  return {
    proposal,
    items: await Promise.all(proposal.items.map(shownItem)),
    distance: plan?.ok ? distanceBetween(inForce, plan.value.inForce) : undefined,
  }
}

function withoutShare(item: Readonly<Record<string, unknown>>, left: boolean) {
  const { share, ...others } = item
  return left ? others : { share, ...others }
}
