import type { Result } from '../../../lib/core/result.ts'
import { type Distance, distanceBetween } from '../../../lib/core/shares/distance.ts'
import { placesOf } from '../../../lib/core/shares/itemShares.ts'
import { sharedUses } from '../../../lib/core/shares/passages.ts'
import { shareItems } from '../../../lib/core/shares/statement.ts'
import { saysTheSame } from '../../../lib/forms/mergeDrafts.ts'
import { proposedKeys } from '../../../lib/forms/proposedOnto.ts'
import { isObject } from '../../../lib/forms/readNotebook.ts'
import type { Proposal, ProposedItem } from '../../../lib/store/proposals.ts'
import { differences, differenceWords, type KnownBeside } from '../../../lib/words/differences.ts'
import { householdNames } from '../../../lib/words/labels.ts'
import { proposedChangeWords, thenProposedWords } from '../../../lib/words/proposalText.ts'
import { itemShareSentences, shareNames } from '../../../lib/words/shareText.ts'
import { itemTitles } from './itemTitles.ts'
import type { Opened } from './opened.ts'
import { knownToProposer, shownPrint } from './proposalSeen.ts'
import { isFitting, type ProposedNow, proposedNow } from './proposedNow.ts'
import { proposedPlan } from './proposedPlan.ts'

/** What a proposal has for one item, in words. */
export type ShownItem = {
  readonly id: string
  readonly title: string
  readonly since: ProposedNow['since']
  /** What was changed in the item since: all of it where the proposal can be taken over, else what stands in its way. */
  readonly changed: readonly string[]
  /** Another way to share is proposed. */
  readonly sharedAnew: boolean
  /** The pot whose way to share is left as it is, where another one is proposed for the other pot. */
  readonly stays: 'materials' | 'labour' | undefined
  /** What it would ask, on the item as it is now, of the pots that it proposes for; empty where that can't be worked out. */
  readonly shares: readonly { readonly pot: string; readonly sentence: string }[]
  /** What is proposed besides how it is shared; all that is, where it can't be worked out. */
  readonly differs: readonly string[]
}

export type ShownProposal = {
  readonly proposal: Proposal
  readonly items: readonly ShownItem[]
  /** From the plan as it stands to the plan with this in it; undefined where something can't be taken over. */
  readonly distance: Result<Distance> | undefined
  /** Titles of the items that its household has neither proposed for nor marked as they are now. */
  readonly ownMarkOnly: readonly string[]
  /** What a press on it is about. */
  readonly shown: string
}

export function shownProposal(opened: Opened, proposal: Proposal): ShownProposal {
  const { document, inForce, standings } = opened
  const titleOf = itemTitles(document, proposal.items)
  const beside = { currency: opened.notebook.currency, names: householdNames(opened.notebook) }
  const found = proposal.items.map((item) => ({ item, now: proposedNow(document, item) }))
  const fitting = found.map(({ now }) => now).filter(isFitting)
  const plan = fitting.length === found.length ? proposedPlan(document, fitting, inForce.caps) : undefined
  const asked = plan?.ok ? shareItems(plan.value.notebook).items : []
  const places = plan?.ok ? placesOf(plan.value.notebook) : []
  const shownItem = ({ item, now }: { item: ProposedItem; now: ProposedNow }): ShownItem => {
    const { id } = item
    const would = asked.find((one) => one.id === id)
    const place = places.find((one) => one.item.id === id)
    const names = shareNames(inForce, place && sharedUses(place.item))
    const stays = isFitting(now) ? potThatStays(now.now.share, now.item.share) : undefined
    return {
      id,
      title: titleOf(id),
      since: now.since,
      changed: now.since === 'gone' ? [] : now.changed.map(differenceWords),
      sharedAnew: isFitting(now) && proposedKeys(now.now, now.item).includes('share'),
      stays,
      shares:
        would === undefined
          ? []
          : itemShareSentences(would, names).filter((_, at) => pots[at] === undefined || pots[at] !== stays),
      differs: isFitting(now)
        ? differences(
            withoutShare(now.now, would !== undefined),
            withoutShare(now.item, would !== undefined),
            beside,
          ).map(proposedChangeWords)
        : thenProposed(item, beside),
    }
  }
  const marked = standings
    .filter(({ markedAt }) => markedAt[proposal.household] !== undefined)
    .map(({ item, fingerprint }) => ({ itemKey: item.key, fingerprint }))
  const known = knownToProposer(document, proposal.items, marked)
  return {
    proposal,
    items: found.map(shownItem),
    distance: plan?.ok ? distanceBetween(inForce, plan.value.inForce) : undefined,
    ownMarkOnly: fitting.filter(({ id }) => !known.has(id)).map(({ id }) => titleOf(id)),
    shown: shownPrint(document, proposal.items),
  }
}

/** In the order of their sentences, where each is shared by itself. */
const pots = ['materials', 'labour'] as const

/** Where two pots are shared each by itself, before and after, and only one of them anew: the other. */
function potThatStays(before: unknown, after: unknown): (typeof pots)[number] | undefined {
  if (!isObject(before) || !isObject(after) || 'together' in before || 'together' in after) return undefined
  const same = pots.filter((pot) => saysTheSame(pot, before[pot], after[pot]))
  return same.length === 1 ? same[0] : undefined
}

/** What was proposed for an item as it then was. */
function thenProposed({ was, item }: ProposedItem, known: KnownBeside): readonly string[] {
  return was === undefined ? [] : differences(was, item, known).map(thenProposedWords)
}

function withoutShare(item: Readonly<Record<string, unknown>>, left: boolean) {
  const { share, ...others } = item
  return left ? others : { share, ...others }
}
