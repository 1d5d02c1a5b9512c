'use server'

import { z } from 'zod'
import { requireHousehold } from '../../../lib/access/whoAsks.ts'
import { agreedItems, wholeNotebook } from '../../../lib/core/agreement/agreedItems.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { type MessageKind, messageKinds, messagesOf, sayBesideItem } from '../../../lib/store/messages.ts'
import { findNotebook } from '../../../lib/store/notebooks.ts'
import { longestMessage, messageRefusals } from '../../../lib/words/messageText.ts'
import type { Fault, SaveAnswer } from '../../ui/draft/saveAnswer.ts'
import { readDraft, refusedDraft } from './readDraft.ts'
import { typedText } from './typedText.ts'

const keySchema = z.string().min(1).max(200_000)

/**
 * Says something beside an item, for both households to read. What was said stays said. Sent `again`, because no answer
 * came, it is said only if it is not what the household said there last.
 */
export async function sayAboutItem(
  notebookId: string,
  itemKey: string,
  _base: string,
  draft: unknown,
  again: unknown = false,
): Promise<SaveAnswer> {
  const { household } = await requireHousehold(notebookId)
  const read = z.object({ itemKey: keySchema, draft: readDraft }).safeParse({ itemKey, draft })
  if (!read.success) return refusedDraft
  const key = await knownKey(notebookId, read.data.itemKey)
  if (key === undefined) return removed
  const [text, kind] = [typedText(read.data.draft.text), kindOf(read.data.draft.kind)]
  const answers = kind === 'answer' ? idOf(read.data.draft.answers) : undefined
  const messages = await messagesOf(notebookId, key)
  const ofOther = messages.filter((one) => one.household !== household)
  const answered = ofOther.find(({ id }) => id === answers)
  const faults = faultsOf(text, kind, answered !== undefined)
  if (faults.length > 0 || kind === undefined) return { faults }
  const last = messages.findLast((one) => one.household === household)
  const isLast = last?.kind === kind && last.text === text && last.answers === answered?.id
  if (again === true && isLast) return said
  const outcome = await sayBesideItem({
    notebookId,
    itemKey: key,
    household,
    kind,
    text,
    ...(answered ? { answers: answered.id } : {}),
    at: new Date(),
  })
  if (outcome === 'no-such-message') return { faults: [noSuchMessage] }
  return said
}

// Not a redirect: one to another place on the same page brings no new data, and one to its top loses the place.
const said: SaveAnswer = { saved: true, base: 'new', note: 'Said.' }

/** The key again where an item has it, or where it stands for the whole notebook; else undefined. */
async function knownKey(notebookId: string, key: string): Promise<string | undefined> {
  if (key === wholeNotebook) return key
  const stored = await findNotebook(notebookId)
  if (stored === undefined) return undefined
  const items = agreedItems(JSON.parse(stored.document) as NotebookDocument)
  return items.some((item) => item.key === key) ? key : undefined
}

function kindOf(value: unknown): MessageKind | undefined {
  return messageKinds.find((kind) => kind === value)
}

function idOf(value: unknown): number | undefined {
  return typeof value === 'string' && /^[0-9]{1,15}$/.test(value) ? Number(value) : undefined
}

function faultsOf(text: string, kind: MessageKind | undefined, answersOne: boolean): Fault[] {
  return [
    ...(kind === undefined ? [{ path: 'kind', message: messageRefusals.kind }] : []),
    ...(kind === 'answer' && !answersOne ? [noSuchMessage] : []),
    ...(text === '' ? [{ path: 'text', message: messageRefusals.text }] : []),
    ...(text.length > longestMessage
      ? [{ path: 'text', message: messageRefusals.tooLong(text.length) }]
      : []),
  ]
}

const noSuchMessage: Fault = {
  path: 'answers',
  message: messageRefusals.answers,
}

const removed: SaveAnswer = {
  gone: true,
  message: messageRefusals.removed,
}
