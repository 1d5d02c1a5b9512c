'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { signingParties } from '../../../lib/core/agreement/revision.ts'
import type { Household } from '../../../lib/core/people/household.ts'
import { readNotebook } from '../../../lib/forms/readNotebook.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'
import { freezeRevision, revisionsOf, signRevision } from '../../../lib/store/revisions.ts'
import { householdName } from '../../../lib/words/labels.ts'
import { pressRefusals } from '../../../lib/words/pressText.ts'
import { intentSentence, signingRefusals } from '../../../lib/words/signingWords.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import type { SaveAnswer } from '../../ui/draft/saveAnswer.ts'
import { frozenText } from './frozenText.ts'
import { lockedCopy } from './lockedCopy.ts'
import { signatureFaults, signatureSchema } from './signatureForm.ts'
import { frozenRevisions } from './standingRevision.ts'

/** Freezes the notebook as the next revision, if nothing stands in the way. Looked at again inside the transaction. */
export async function putUpForSigning(
  notebookId: string,
  _previous: PressAnswer,
  _form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const frozen = await freezeRevision({
    id: notebookId,
    household,
    at: new Date(),
    build: frozenText,
  })
  if ('refused' in frozen) return { refused: signingRefusals.notYet(frozen.refused) }
  redirect(`/notebook/${notebookId}/sign`)
}

const whichSchema = z.object({
  revisionId: z.string().min(1),
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  partyIndex: z.number().int().min(0),
})

/** Which party signs which text: bound when the page is made, checked here like anything a browser sends. */
export type SigningPlace = z.infer<typeof whichSchema>

/** Signs for one party of the household that asks, never of the other, on the hash that the party was shown. */
export async function signForParty(
  notebookId: string,
  place: SigningPlace,
  _base: string,
  draft: unknown,
): Promise<SaveAnswer> {
  const { household } = await requireHousehold(notebookId)
  const which = whichSchema.safeParse(place)
  const signature = signatureSchema.safeParse(draft)
  if (!which.success || !signature.success) return refuse('', pressRefusals.form)
  const { revisionId, sha256, partyIndex } = which.data
  const revision = (await revisionsOf(notebookId)).find((one) => one.id === revisionId)
  const read = revision ? readNotebook(revision.canonicalText) : undefined
  const party = read?.ok
    ? signingParties(read.value.notebook).find(
        (one) => one.household === household && one.partyIndex === partyIndex,
      )
    : undefined
  if (!revision || !read?.ok || !party) return refuse('', signingRefusals['no-such-party'])
  const { typedName, drawing } = signature.data
  const faults = signatureFaults(signature.data, party.name, 'agreement')
  if (faults.length > 0) return { faults: [...faults] }
  const outcome = await signRevision({
    notebookId,
    revisionId,
    sha256,
    household,
    partyIndex,
    partyName: party.name,
    capacity: party.capacity,
    typedName,
    intent: intentSentence(party, householdName(read.value.notebook, household)),
    ...(drawing === '' ? {} : { drawing }),
    at: new Date(),
  })
  if (outcome !== 'signed') return refuse('', signingRefusals[outcome])
  await lockIfSignedByAll(notebookId, household, revisionId)
  redirect(`/notebook/${notebookId}/sign`)
}

/**
 * Makes the locked copy once the last party has signed. The signature is on disk already and stays whatever becomes of
 * the copy: the page then says what is wrong with it, and asking for the copy makes it later.
 */
async function lockIfSignedByAll(
  notebookId: string,
  household: Household,
  revisionId: string,
): Promise<void> {
  const stored = await findNotebook(notebookId)
  const current = stored ? readNotebook(stored.document) : undefined
  if (!current?.ok) return
  const all = await frozenRevisions(notebookId, current.value.notebook)
  const frozen = all.find(({ revision }) => revision.id === revisionId)
  if (frozen === undefined || frozen.stillToSign.length > 0) return
  try {
    await lockedCopy({ notebookId, household, frozen, all })
  } catch (error) {
    console.error('The locked copy could not be made; it is made when it is next asked for.', error)
  }
}

function refuse(path: string, message: string): SaveAnswer {
  return { faults: [{ path, message }] }
}
