'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import type { ProposalRefusal } from '../../../lib/core/agreement/proposalRefusal.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'
import { endProposal, type Proposal, proposalsOf } from '../../../lib/store/proposals.ts'
import { pressRefusals } from '../../../lib/words/pressText.ts'
import { answerRefusals, longestReason, proposalRefusalWords } from '../../../lib/words/proposalText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import { accept } from './acceptance.ts'
import { itemTitles } from './itemTitles.ts'
import { pressFields } from './pressFields.ts'
import { shownPrint } from './proposalSeen.ts'
import { propose } from './propose.ts'
import { proposedAnew } from './proposedAnew.ts'
import { typedText } from './typedText.ts'

const idSchema = z.object({ id: z.string().regex(/^[1-9][0-9]{0,14}$/) })
const shownSchema = z.object({ shown: z.string().regex(/^[0-9a-f]{64}$/) })

/** Which proposal a press is about; undefined where it can't be read. */
function idOf(form: FormData): number | undefined {
  const read = idSchema.safeParse(pressFields(form))
  return read.success ? Number(read.data.id) : undefined
}

/** The items of the proposal as the page of a press shows them; undefined where that can't be read. */
function shownBy(form: FormData): string | undefined {
  return shownSchema.safeParse(pressFields(form)).data?.shown
}

/** Puts the other household's proposal into the plan, with the marks that are due. */
export async function acceptTheirs(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const id = idOf(form)
  const shown = shownBy(form)
  if (id === undefined || shown === undefined) return { refused: pressRefusals.unreadable }
  const outcome = await accept(notebookId, household, id, shown)
  if ('refused' in outcome) return refusedBy(notebookId, outcome.refused)
  redirect(`/notebook/${notebookId}/proposals`)
}

/** Says why not to the other household's proposal. */
export async function declineTheirs(
  notebookId: string,
  previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  await requireHousehold(notebookId)
  const text = typedText(pressFields(form).text)
  return text === '' ? { refused: answerRefusals.why } : end(notebookId, previous, form, 'declined', text)
}

/** Takes the household's own proposal back. */
export async function withdrawOwn(
  notebookId: string,
  previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  return end(notebookId, previous, form, 'withdrawn', '')
}

async function end(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
  kind: 'declined' | 'withdrawn',
  text: string,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const id = idOf(form)
  if (id === undefined) return { refused: pressRefusals.unreadable }
  if (text.length > longestReason)
    return refusedBy(notebookId, { kind: 'too long', length: text.length, limit: longestReason })
  const outcome = await endProposal({ notebookId, household, id, kind, text, at: new Date() })
  if (outcome === 'no-such-proposal') return refusedBy(notebookId, { kind: 'no such proposal' })
  if (outcome === 'ended') return refusedBy(notebookId, { kind: 'ended' })
  redirect(`/notebook/${notebookId}/proposals`)
}

/** Proposes a proposal's way to share again, for its items as they are now: one's own, or theirs as an answer to it. */
export async function proposeAnew(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const [id, shown] = [idOf(form), shownBy(form)]
  if (id === undefined || shown === undefined) return { refused: pressRefusals.unreadable }
  const [stored, proposals] = [await findNotebook(notebookId), await proposalsOf(notebookId)]
  const proposal = proposals.find((one) => one.id === id)
  if (stored === undefined || proposal === undefined)
    return refusedBy(notebookId, { kind: 'no such proposal' })
  const document = JSON.parse(stored.document) as NotebookDocument
  if (shownPrint(document, proposal.items) !== shown)
    return refusedBy(notebookId, { kind: 'shown otherwise' })
  const own = proposal.household === household
  const answers = own || proposal.reply !== undefined ? undefined : proposal.id
  const text = own ? proposal.text : ''
  const made = await propose(notebookId, household, proposedAnew(document, proposal), text, answers)
  if ('refused' in made) return refusedBy(notebookId, made.refused, proposal)
  redirect(`/notebook/${notebookId}/proposals`)
}

async function refusedBy(
  notebookId: string,
  refusal: ProposalRefusal,
  about?: Pick<Proposal, 'items'>,
): Promise<PressAnswer> {
  const stored = await findNotebook(notebookId)
  const titleOf = itemTitles(stored ? JSON.parse(stored.document) : {}, about?.items)
  return { refused: proposalRefusalWords(refusal, titleOf) }
}
