'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { canonicalText } from '../../../lib/core/agreement/canonicalText.ts'
import type { ProposalRefusal } from '../../../lib/core/agreement/proposalRefusal.ts'
import type { Household } from '../../../lib/core/people/household.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'
import { type Proposal, type ProposedItem, proposalsOf } from '../../../lib/store/proposals.ts'
import { pressRefusals } from '../../../lib/words/pressText.ts'
import type { SaveAnswer } from '../../ui/draft/saveAnswer.ts'
import { capsNow } from './capsNow.ts'
import { changedSinceOpened } from './proposalConflict.ts'
import { draftedAsSeen, draftedItems, itemsBase, readProposalDraft } from './proposalDraft.ts'
import { proposalFaults } from './proposalFaults.ts'
import { type Preview, previewOf } from './proposalPreview.ts'
import { propose } from './propose.ts'
import { readDraft, refusedDraft } from './readDraft.ts'
import { typedText } from './typedText.ts'

/** 0: none. */
const answersSchema = z.number().int().min(0)

/**
 * Proposes what the form holds. Where an item that is in it was changed after the form was opened, nothing is sent and the
 * household is asked. Sent `again`, because no answer came, it is made only if it is not what the household proposed last.
 *
 * @param answers the id of the proposal that this one answers; 0: none
 */
export async function sendProposal(
  notebookId: string,
  answers: number,
  base: string,
  draft: unknown,
  again: unknown = false,
): Promise<SaveAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = await readForm(notebookId, household, answers, draft)
  if (read === undefined || typeof base !== 'string') return refusedDraft
  const { document, answered, form } = read
  const items = draftedAsSeen(document, form, answered, base)
  const text = typedText(form.text)
  if (again === true && (await hasProposed(notebookId, household, items, text)))
    redirect(`/notebook/${notebookId}/proposals`)
  if (read.refused !== undefined) return { faults: proposalFaults(document, form, read.refused) }
  const changed =
    base === itemsBase(document) ? undefined : await changedSinceOpened(notebookId, document, form, answered)
  if (changed !== undefined) return { conflict: changed }
  const made = await propose(notebookId, household, items, text, answered?.id)
  if ('refused' in made) return { faults: proposalFaults(document, form, made.refused) }
  redirect(`/notebook/${notebookId}/proposals`)
}

/** What the form would ask of each household, before anything is sent. */
export async function previewProposal(notebookId: string, answers: number, draft: unknown): Promise<Preview> {
  const { household } = await requireHousehold(notebookId)
  const read = await readForm(notebookId, household, answers, draft)
  if (read === undefined) return { refused: [pressRefusals.form] }
  const items = draftedItems(read.document, read.form, read.answered)
  return previewOf(read.document, items, await capsNow(notebookId))
}

async function readForm(notebookId: string, household: Household, answers: unknown, draft: unknown) {
  const read = z.object({ answers: answersSchema, draft: readDraft }).safeParse({ answers, draft })
  const form = read.success ? readProposalDraft(read.data.draft) : undefined
  const stored = await findNotebook(notebookId)
  if (!read.success || form === undefined || stored === undefined) return undefined
  const document = JSON.parse(stored.document) as NotebookDocument
  const asked = read.data.answers
  const answered = asked === 0 ? undefined : (await proposalsOf(notebookId)).find(({ id }) => id === asked)
  return {
    document,
    form,
    answered,
    refused: asked === 0 ? undefined : notAnswerable(answered, household),
  }
}

/** Whether the last proposal of a household is this one. */
async function hasProposed(
  notebookId: string,
  household: Household,
  items: readonly ProposedItem[],
  text: string,
): Promise<boolean> {
  const last = (await proposalsOf(notebookId)).findLast((one) => one.household === household)
  const saying = (proposed: readonly ProposedItem[]) =>
    canonicalText(proposed.map(({ id, item }) => ({ id, item })))
  return last !== undefined && last.text === text && saying(last.items) === saying(items)
}

function notAnswerable(answered: Proposal | undefined, household: Household): ProposalRefusal | undefined {
  if (answered === undefined) return { kind: 'no such proposal' }
  if (answered.household === household) return { kind: 'own' }
  return answered.reply === undefined ? undefined : { kind: 'ended' }
}
