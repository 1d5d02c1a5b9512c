import { cache } from 'react'
import type { Need } from '../../../lib/core/agreement/needs.ts'
import type { MetNeed } from '../../../lib/core/agreement/notebook.ts'
import { type ForBoth, type Household, households } from '../../../lib/core/people/household.ts'
import { readNeeds } from '../../../lib/forms/saidApart.ts'
import { heldBackOf, needsSubject } from '../../../lib/store/heldBack.ts'

/** Needs as one household may see them: its own, and both once both have said theirs. */
export type NeedsSeen = {
  readonly own: readonly Need[] | undefined
  readonly otherSaid: boolean
  readonly both: ForBoth<readonly Need[]> | undefined
}

/** Read once per request, however many parts of a page ask for it. */
export const needsOf = cache(async (notebookId: string, household: Household): Promise<NeedsSeen> => {
  const seen = await heldBackOf({ notebookId, household, subject: needsSubject })
  const own = seen.own && readNeeds(seen.own.content)
  if (typeof seen.other === 'string' || own === undefined)
    return { own, otherSaid: seen.other !== 'not said', both: undefined }
  const other = readNeeds(seen.other.content)
  return { own, otherSaid: true, both: household === 'a' ? { a: own, b: other } : { a: other, b: own } }
})

/** What a section can be said to meet; undefined until both have said what they need. */
export async function needsToMeet(
  notebookId: string,
  household: Household,
): Promise<readonly MetNeed[] | undefined> {
  const { both } = await needsOf(notebookId, household)
  return both && households.flatMap((of) => both[of].map(({ need }) => ({ household: of, need })))
}
