'use server'

import { notFound, redirect } from 'next/navigation'
import { lookAtToken } from '../../../lib/access/openKey.ts'
import { claimInvitation } from '../../../lib/store/entryKeys.ts'
import { linkRefusals } from '../../../lib/words/linkText.ts'
import { letIn, letInAndShowLink } from '../../notebook/server/letIn.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'

/** Lets this browser in by a link; the redirect takes the token out of the address bar. */
export async function openByLink(
  token: string,
  _previous: PressAnswer,
  _form: FormData,
): Promise<PressAnswer> {
  const key = await lookAtToken(token)
  if (key?.kind !== 'link') notFound()
  await letIn(key.notebookId, token)
  redirect(`/notebook/${key.notebookId}`)
}

/** Claims an invitation, once: the second household gets a link of its own, which only it can replace. */
export async function claim(token: string, _previous: PressAnswer, _form: FormData): Promise<PressAnswer> {
  const claimed = await claimInvitation({ token, at: new Date() })
  if ('refused' in claimed) {
    if (claimed.refused === 'unknown') notFound()
    return { refused: linkRefusals.usedAlready }
  }
  await letInAndShowLink(claimed.notebookId, claimed.token)
  redirect(`/notebook/${claimed.notebookId}/links`)
}
