'use server'

import { redirect } from 'next/navigation'
import { openingAddress } from '../../../lib/access/address.ts'
import {
  clearNewLinkCookie,
  clearSessionCookie,
  readSessionCookie,
} from '../../../lib/access/sessionCookie.ts'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { otherHousehold } from '../../../lib/core/people/household.ts'
import { readNotebook } from '../../../lib/forms/readNotebook.ts'
import { hasLink, issueFirstLink, issueInvitation, replaceLink } from '../../../lib/store/entryKeys.ts'
import { newestFirstAnswer } from '../../../lib/store/firstAnswers.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'
import { endSession } from '../../../lib/store/sessions.ts'
import { linkRefusals } from '../../../lib/words/linkText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { letIn, letInAndShowLink } from './letIn.ts'

/** Makes the one-time invitation for the second household. Only the first household can. */
export async function invite(notebookId: string): Promise<{ address: string } | { refused: string }> {
  const { household } = await requireHousehold(notebookId)
  if (household !== 'a') return { refused: linkRefusals.onlyFirstInvites }
  const issued = await issueInvitation({ notebookId, at: new Date() })
  if ('refused' in issued) return { refused: linkRefusals.nobodyLeft }
  return { address: openingAddress(issued.token) }
}

/** The household has kept its new link: it is not shown again. */
export async function forgetNewLink(
  notebookId: string,
  _previous: PressAnswer,
  _form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  await clearNewLinkCookie(notebookId)
  const home = `/notebook/${notebookId}`
  // Whoever was invited sees first what is asked of it; whoever started the notebook still has somebody to invite.
  if (household === 'b') redirect((await newestFirstAnswer(notebookId)) ? home : `${home}/welcome`)
  if (await nothingLaidOut(notebookId)) redirect(`${home}/first-split`)
  redirect((await hasLink(notebookId, 'b')) ? home : `${home}/links`)
}

/** Whether the notebook has neither a section nor a gate: then a first split is the short way in. */
async function nothingLaidOut(notebookId: string): Promise<boolean> {
  const read = readNotebook((await findNotebook(notebookId))?.document ?? '')
  return read.ok && read.value.notebook.sections.length + read.value.notebook.gates.length === 0
}

/** Replaces the household's own link, and lets this browser in by the new one. */
export async function replaceOwnLink(
  notebookId: string,
  _previous: PressAnswer,
  _form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const { token } = await replaceLink({ notebookId, household, at: new Date() })
  await letInAndShowLink(notebookId, token)
  redirect(`/notebook/${notebookId}/links`)
}

/** Ends this browser's session; the link goes on working. */
export async function leave(
  notebookId: string,
  _previous: PressAnswer,
  _form: FormData,
): Promise<PressAnswer> {
  await requireHousehold(notebookId)
  const token = await readSessionCookie(notebookId)
  if (token !== undefined) await endSession({ token, at: new Date() })
  await clearSessionCookie(notebookId)
  redirect('/')
}

/** In the example alone: the same browser comes in as the other household. */
export async function seeAsOther(
  notebookId: string,
  _previous: PressAnswer,
  _form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const stored = await findNotebook(notebookId)
  if (!stored?.example) return { refused: linkRefusals.onlyInExample }
  const other = otherHousehold(household)
  const at = new Date()
  const issue = (await hasLink(notebookId, other)) ? replaceLink : issueFirstLink
  const { token } = await issue({ notebookId, household: other, at })
  await letIn(notebookId, token)
  redirect(`/notebook/${notebookId}`)
}
