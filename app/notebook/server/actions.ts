'use server'

import { redirect } from 'next/navigation'
import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { agreedItems, idOfItemKey } from '../../../lib/core/agreement/agreedItems.ts'
import { withoutPassages } from '../../../lib/forms/gatePassages.ts'
import { addItem, itemLike, moveItem, type Part, removeItem, wholeParts } from '../../../lib/forms/parts.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { itemKeysOnRecord } from '../../../lib/store/changes.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import { setMark, takeMark } from '../../../lib/store/marks.ts'
import { itemRefusals, pressRefusals } from '../../../lib/words/pressText.ts'
import type { PressAnswer } from '../../ui/draft/PressForm.tsx'
import type { SaveAnswer } from '../../ui/draft/saveAnswer.ts'
import { pressFields } from './pressFields.ts'
import { readDraft, refusedDraft } from './readDraft.ts'
import { editDocument, removePart, savePart, wantedSources } from './savePart.ts'

// Everything here can be called by anyone with any arguments: each action checks who asks and reads what it was given.

const partSchema: z.ZodType<Part> = z.union([
  z.object({ part: z.enum(wholeParts) }),
  z.object({ part: z.literal('item'), id: z.string().min(1) }),
])
const kindSchema = z.enum(['section', 'gate', 'common'])
const textSchema = z.string().max(200_000)

/** Saves one form of the notebook. */
export async function saveNotebookPart(
  notebookId: string,
  part: Part,
  base: string,
  draft: unknown,
): Promise<SaveAnswer> {
  await requireHousehold(notebookId)
  const read = z.object({ part: partSchema, base: textSchema }).safeParse({ part, base })
  return read.success ? savePart(notebookId, read.data.part, read.data.base, draft) : refusedDraft
}

/**
 * Adds a section, gate or common cost at the end of its list and goes to its page. Sent `again`, because no answer came,
 * it is added only if it had not arrived.
 */
export async function addNotebookItem(
  notebookId: string,
  kind: string,
  _base: string,
  draft: unknown,
  again: unknown = false,
): Promise<SaveAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = z.object({ kind: kindSchema, draft: readDraft }).safeParse({ kind, draft })
  if (!read.success) return refusedDraft
  const usedBefore = (await itemKeysOnRecord(notebookId)).flatMap((key) => idOfItemKey(key) ?? [])
  let id = ''
  const answer = await editDocument(notebookId, household, (document) => {
    const added = addItem(document, read.data.kind, withoutPassages(read.data.draft), usedBefore)
    const arrived = again === true ? itemLike(document, added) : undefined
    id = arrived ?? added.id
    if (arrived !== undefined) return { saved: true, base: '' }
    const wanting = wantedSources(undefined, read.data.draft)
    return { next: added.document, within: { part: 'item', id }, wanting }
  })
  if ('saved' in answer) redirect(`/notebook/${notebookId}/item/${encodeURIComponent(id)}`)
  return answer
}

export async function removeNotebookItem(notebookId: string, id: string, base: string): Promise<SaveAnswer> {
  await requireHousehold(notebookId)
  const read = z.object({ id: z.string().min(1), base: textSchema }).safeParse({ id, base })
  if (!read.success) return refusedDraft
  const answer = await removePart(notebookId, { part: 'item', id }, base, (document) =>
    removeItem(document, id),
  )
  if ('saved' in answer) redirect(`/notebook/${notebookId}`)
  if (!('faults' in answer) || !answer.faults.every(({ path }) => path.startsWith('contributions')))
    return answer
  return { faults: [{ path: '', message: itemRefusals.hasEntries }] }
}

/** Moves an item up or down in its list; the order decides who is asked for an odd cent, and how the line is drawn. */
export async function moveNotebookItem(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = z.object({ id: z.string().min(1), way: z.enum(['up', 'down']) }).safeParse(pressFields(form))
  if (!read.success) return { refused: pressRefusals.unreadable }
  const { id, way } = read.data
  const answer = await editDocument(notebookId, household, (document) => ({
    next: moveItem(document, id, way === 'up' ? -1 : 1),
  }))
  if ('faults' in answer) return { refused: answer.faults.map(({ message }) => message).join(' ') }
  redirect(`/notebook/${notebookId}`)
}

const markSchema = z.object({
  itemKey: textSchema.min(1),
  fingerprint: z.string().regex(/^[0-9a-f]{64}$/),
  back: z.string(),
})

/** Marks an item as agreed for the household that asks, never for the other. */
export async function agreeToItem(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = markSchema.safeParse(pressFields(form))
  if (!read.success) return { refused: pressRefusals.unreadable }
  const { itemKey, fingerprint, back } = read.data
  const outcome = await setMark({
    id: notebookId,
    household,
    itemKey,
    fingerprint,
    at: new Date(),
    currentFingerprint,
  })
  if (outcome === 'changed-since') {
    return { refused: itemRefusals.changed }
  }
  if (outcome === 'no-such-item') return { refused: itemRefusals.removed }
  redirect(backTo(notebookId, back))
}

/** Takes the household's own mark off an item. */
export async function takeAgreementBack(
  notebookId: string,
  _previous: PressAnswer,
  form: FormData,
): Promise<PressAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = markSchema.safeParse(pressFields(form))
  if (!read.success) return { refused: pressRefusals.unreadable }
  await takeMark({ id: notebookId, household, itemKey: read.data.itemKey, at: new Date() })
  redirect(backTo(notebookId, read.data.back))
}

function currentFingerprint(stored: string, itemKey: string): string | undefined {
  const item = agreedItems(JSON.parse(stored) as NotebookDocument).find((one) => one.key === itemKey)
  return item === undefined ? undefined : fingerprintOf(item.inputs)
}

/**
 * Only pages of this notebook, in letters that a header can carry: the form says where it came from, and a form can say
 * anything.
 */
function backTo(notebookId: string, back: string): string {
  const home = `/notebook/${notebookId}`
  const within = back.startsWith(`${home}/`) || back.startsWith(`${home}#`)
  const isPage = within && !back.includes('..') && /^[\x21-\x7e]{1,2000}$/.test(back)
  return isPage ? back : home
}
