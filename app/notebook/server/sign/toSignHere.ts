import type { PartyPlace } from '../../../../lib/core/agreement/revision.ts'
import type { Household } from '../../../../lib/core/people/household.ts'
import type { FrozenRevision } from '../standingRevision.ts'

/** The parties of a household that have not signed a revision yet: it signs for nobody else. */
export function toSignHere({ stillToSign }: FrozenRevision, household: Household): readonly PartyPlace[] {
  return stillToSign.filter((place) => place.household === household)
}

/** Where the form of a party stands on the page. */
export function placeId({ partyIndex }: PartyPlace): string {
  return `party-${partyIndex}`
}
