import type { ProposalRefusal } from '../core/agreement/proposalRefusal.ts'
import { never } from '../core/assert.ts'
import { type Difference, labelOf } from './differences.ts'
import { faultText } from './faultText.ts'
import { pressRefusals } from './pressText.ts'
import { savingRefusals } from './savingText.ts'
import { capitalised, spokenList } from './summary/names.ts'

/** As long as the words with a proposal or a reply may be, in characters. */
export const longestReason = 4000

export type ProposalEndName = 'accepted' | 'declined' | 'answered' | 'withdrawn'

/** Why a proposal is not answered, or not sent as it was ticked. */
export const answerRefusals = {
  why: 'Needed: say why not, in a few words. The other household can then propose something better.',
  /** At the tick of the item. */
  itemGone: 'This item was removed in the meantime. Leave it out.',
} as const

/** How a proposal ended. `by` is the number of the proposal that ended it, where one did. */
export function endWords(kind: ProposalEndName, by?: number): string {
  switch (kind) {
    case 'accepted':
      return 'accepted'
    case 'declined':
      return 'not accepted'
    case 'answered':
      return by === undefined ? 'answered with another' : `answered with proposal ${by}`
    case 'withdrawn':
      return by === undefined ? 'withdrawn' : `withdrawn when proposal ${by} took its place`
    default:
      return never(kind)
  }
}

/** Why nothing came of it, and what would help. `titleOf` gives what an item is called. */
export function proposalRefusalWords(refusal: ProposalRefusal, titleOf: (id: string) => string): string {
  switch (refusal.kind) {
    case 'no items':
      return 'Needed: tick at least one item that you propose something for.'
    case 'items gone':
      return `No longer in the notebook: ${refusal.items.map(titleOf).join(', ')}. Nothing was changed.`
    case 'items changed':
      return `What this proposes was itself changed since: ${refusal.items.map((one) => changedItemWords(one, titleOf)).join('; ')}. Nothing was changed. “Propose it anew” proposes the same way to share for the items as they are now.`
    case 'sources missing':
      return `${savingRefusals.source} Missing for ${[...new Set(refusal.at.map(({ item }) => titleOf(item)))].join(', ')}.`
    case 'nothing proposed':
      return 'Nothing in this differs from what stands in the notebook now. To agree to an item as it stands, mark it on its page.'
    case 'does not hold':
      return `With this the shares could not be worked out. ${refusal.faults.map(faultText).join(' ')}`
    case 'too long':
      return `At most ${refusal.limit} characters; this has ${refusal.length}.`
    case 'closed':
      return pressRefusals.closed(refusal.revision)
    case 'shown otherwise':
      return 'What this proposal is about was changed since you opened the page. Nothing was changed by your press. Load the page again, read what changed, then choose.'
    case 'no such proposal':
      return 'There is no such proposal in this notebook. Nothing was changed.'
    case 'own':
      return 'This is your own household’s proposal. Only the other household can accept or answer it; you can withdraw it.'
    case 'ended':
      return 'This proposal has ended in the meantime. Load the page again to see how.'
    default:
      return never(refusal)
  }
}

/** "Slope on clay (share, height)" */
function changedItemWords(
  { id, keys }: { readonly id: string; readonly keys: readonly string[] },
  titleOf: (id: string) => string,
): string {
  const labels = keys.map((key) => labelOf([key]).toLowerCase())
  return labels.length === 0 ? titleOf(id) : `${titleOf(id)} (${labels.join(', ')})`
}

/** What a proposal would change in an item: "Height: 6 ft now, 6 ft 6 in proposed". */
export function proposedChangeWords({ label, before, after }: Difference): string {
  const none = '(nothing)'
  if (before === none) return `${label}: ${after} proposed, nothing now`
  return after === none ? `${label}: ${before} now, left out` : `${label}: ${before} now, ${after} proposed`
}

/** Of a proposal that is for the other pot alone. */
export function potStaysWords(pot: 'materials' | 'labour'): string {
  return pot === 'labour'
    ? 'The work stays shared as it is now.'
    : 'The materials stay shared as they are now.'
}

/** What a proposal would have changed in an item as it was when it was made. */
export function thenProposedWords({ label, before, after }: Difference): string {
  const none = '(nothing)'
  if (before === none) return `${label}: ${after} proposed, nothing then`
  return after === none ? `${label}: ${before} then, left out` : `${label}: ${before} then, ${after} proposed`
}

/** What became of an item since something was proposed for it, as far as a sentence needs it. */
type SinceProposed =
  | { readonly since: 'as it was' | 'gone' }
  | { readonly since: 'moved on' | 'changed'; readonly changed: readonly Difference[] }

/**
 * What a household's proposal for an item that was changed since stands for among the positions; undefined where the item
 * is as it was.
 */
export function sinceProposedWords(
  found: SinceProposed,
  said: { readonly number: number; readonly name: string; readonly day: string; readonly title: string },
): string | undefined {
  const made = `Proposal ${said.number} of ${said.name} was made on ${said.day} for ${said.title} as it then was.`
  switch (found.since) {
    case 'as it was':
      return undefined
    case 'moved on':
      return `${made} Its figures here are for the item as it is now. Changed since: ${changedLabels(found.changed)}.`
    case 'changed':
      return `${made} What it proposes was itself changed since, so ${said.name} has no figure here until this is proposed anew or withdrawn.`
    case 'gone':
      return `${made} The item was removed since, so ${said.name} has no figure here until this is proposed anew or withdrawn.`
    default:
      return never(found)
  }
}

/** "notes, materials 1, unit price" */
function changedLabels(changed: readonly Difference[]): string {
  return changed.map(({ label }) => label.charAt(0).toLowerCase() + label.slice(1)).join('; ')
}

/** "Proposal 2 of no. 14, for the slope, waits for the answer of no. 12." */
export function standingProposalWords(proposal: {
  readonly number: number
  readonly by: string
  readonly of: string
  readonly items: readonly string[]
}): string {
  const { number, by, of, items } = proposal
  return `Proposal ${number} of ${by}, for ${spokenList(items)}, waits for the answer of ${of}.`
}

/** Said beside what is to be signed. */
export const proposalsBesideSigning = {
  heading: 'Proposals still wait',
  noBar:
    'You can sign all the same: what is signed is what stands below, without them. Answer them first if they should be in it.',
} as const

/** "1 proposal of no. 14 waits for your answer" */
export function waitingProposalsWords(count: number, name: string): string {
  return count === 1
    ? `1 proposal of ${name} waits for your answer`
    : `${count} proposals of ${name} wait for your answer`
}

/** Of these items, named by their titles, accepting sets no mark of whoever proposed: it knows them otherwise, or that is not known. */
export function ownMarkOnlyWords(proposer: string, items: readonly string[]): string {
  const now = items.length === 1 ? 'it stands' : 'they stand'
  return `${capitalised(proposer)} has not marked ${spokenList(items)} as ${now} now. There its mark is its own to set; yours is set.`
}

/** What is asked before a proposal is accepted. */
export function acceptQuestion(proposer: string, ownMarkOnly: readonly string[]): string {
  const question = 'Put what is proposed into the plan, onto the items as they are?'
  const either = 'Either household can take its own mark off again.'
  return ownMarkOnly.length === 0
    ? `${question} Both households’ marks are then set on them. ${either}`
    : `${question} ${ownMarkOnlyWords(proposer, ownMarkOnly)} ${either}`
}

export const proposalWords = {
  lead: 'What each household proposes, how far you are apart in money, and where that comes from. Nothing here binds: what is accepted goes into the plan, with both marks where nothing else about the item changed since, and you sign later.',
  none: 'Nobody has proposed anything yet. A proposal says for one or several items how they should be shared, or what should be different in them. The other household accepts it, answers with another, or says why not.',
  noItems: 'There is no section, gate or common cost yet that a proposal could be about.',
  takesPlace:
    'A new proposal takes the place of your own earlier ones that have an item with it in common; those end as withdrawn.',
  answersTheirs:
    'This answers their proposal, which ends with it. It stays on the page beside yours for as long as yours stands.',
  whyNot: 'Why not',
  whyNotHint: 'The other household reads it at once. It stays on record.',
  noFigures:
    'There are no figures to hold against each other: what is proposed was itself changed since, or its item was removed.',
  changedSince: 'What this proposes was itself changed since, so it can’t be accepted as it is. Since then:',
  changedUnknown:
    'The item was changed since this was proposed, and how is not on record, so it can’t be accepted as it is.',
  movedOn:
    'The item was changed since this was proposed. What is proposed can still be taken over; the figures are for the item as it is now. Since then:',
  wasProposed: 'What was proposed:',
  wouldDiffer: 'What would be different:',
  sharedAsNow: 'Shared as it is now, it would ask:',
  goneSince: 'The item was removed since this was proposed.',
  anewMeaning:
    'Takes over what is proposed, on the items as they are now. Where that was itself changed since, it takes over only how the item is to be shared.',
  oneForAll: 'One way to share for all of them',
  eachItsOwn: 'Each item in a way of its own',
} as const
