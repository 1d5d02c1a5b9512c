'use server'

import { redirect } from 'next/navigation'
import { lookAtToken } from '../../lib/access/openKey.ts'
import { type PastedAddress, pastedAddress } from '../../lib/access/pastedAddress.ts'
import { whoAsks } from '../../lib/access/whoAsks.ts'
import { readerLinkStands } from '../../lib/store/readerLinks.ts'
import { linkRefusals } from '../../lib/words/linkText.ts'
import { pressFields } from '../notebook/server/pressFields.ts'
import type { PressAnswer } from '../ui/draft/PressForm.tsx'

/**
 * Goes where a link, an invitation or a reader’s link leads that somebody typed or pasted: to the page that says whom it lets
 * in, as if it had been opened. It lets nobody in by itself.
 */
export async function followLink(_previous: PressAnswer, form: FormData): Promise<PressAnswer> {
  const { link } = pressFields(form)
  const text = typeof link === 'string' ? link : ''
  if (text.trim() === '') return { refused: linkRefusals.nothingPasted }
  const pasted = pastedAddress(text)
  if (pasted === undefined) return { refused: linkRefusals.noLink }
  return (await leadsOn(pasted)) ? redirect(pathOf(pasted)) : { refused: refusalOf(pasted) }
}

/** What was ended or replaced looks like what never was. */
async function leadsOn(pasted: PastedAddress): Promise<boolean> {
  if (pasted.kind === 'notebook') return (await whoAsks(pasted.notebookId)) !== undefined
  return pasted.kind === 'read'
    ? readerLinkStands(pasted.token, new Date())
    : (await lookAtToken(pasted.token)) !== undefined
}

function pathOf(pasted: PastedAddress): string {
  return pasted.kind === 'notebook' ? `/notebook/${pasted.notebookId}` : `/${pasted.kind}/${pasted.token}`
}

function refusalOf({ kind }: PastedAddress): string {
  return kind === 'notebook' ? linkRefusals.pageOfNotebook : linkRefusals.unknownHere
}
