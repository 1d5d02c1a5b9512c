import type { ProposalRefusal } from '../core/agreement/proposalRefusal.ts'
import { never } from '../core/assert.ts'
import type { Difference } from './differences.ts'
import { faultText } from './faultText.ts'

/** As long as the words with a proposal or a reply may be, in characters. */
export const longestReason = 4000

export type ProposalEndName = 'accepted' | 'declined' | 'answered' | 'withdrawn'

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
      return `Changed since this was proposed: ${refusal.items.map(titleOf).join(', ')}. Nothing was changed. Load the page again and read what changed; “Propose it anew” proposes the same way to share for the items as they are now.`
    case 'nothing proposed':
      return 'Nothing in this differs from what stands in the notebook now. To agree to an item as it stands, mark it on its page.'
    case 'does not hold':
      return `With this the shares could not be worked out. ${refusal.faults.map(faultText).join(' ')}`
    case 'too long':
      return `At most ${refusal.limit} characters; this has ${refusal.length}.`
    case 'closed':
      return `Nothing was changed: the notebook was closed by revision ${refusal.revision}, which all have signed. Either household can open it again on the page “Closing”.`
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

/** What a proposal would change in an item: "Height: 6 ft now, 6 ft 6 in proposed". */
export function proposedChangeWords({ label, before, after }: Difference): string {
  const none = '(nothing)'
  if (before === none) return `${label}: ${after} proposed, nothing now`
  return after === none ? `${label}: ${before} now, left out` : `${label}: ${before} now, ${after} proposed`
}

/** "1 proposal of no. 14 waits for your answer" */
export function waitingProposalsWords(count: number, name: string): string {
  return count === 1
    ? `1 proposal of ${name} waits for your answer`
    : `${count} proposals of ${name} wait for your answer`
}

export const proposalWords = {
  lead: 'What each household proposes, how far you are apart in money, and where that comes from. Nothing here binds: what is accepted goes into the plan with both marks, and you sign later.',
  none: 'Nobody has proposed anything yet. A proposal says for one or several items how they should be shared, or what should be different in them. The other household accepts it, answers with another, or says why not.',
  takesPlace:
    'A new proposal takes the place of your own earlier ones that have an item with it in common; those end as withdrawn.',
  answersTheirs:
    'This answers their proposal, which ends with it. It stays on the page beside yours for as long as yours stands.',
  acceptQuestion:
    'Put these items into the plan as they are proposed? Both households’ marks are then set on them; either can take its own off again.',
  whyNot: 'Why not',
  whyNotHint: 'The other household reads it at once. It stays on record.',
  changedSince: 'The item was changed since this was proposed, so it can’t be accepted as it is.',
  goneSince: 'The item was removed since this was proposed.',
  anewMeaning:
    'Takes over how these items are to be shared, on the items as they are now. Anything else that was proposed for a changed item is left out.',
  unreadable: 'This press could not be read. Load the page again.',
  whyNeeded: 'Needed: say why not, in a few words. The other household can then propose something better.',
  oneForAll: 'One way to share for all of them',
  eachItsOwn: 'Each item in a way of its own',
} as const
