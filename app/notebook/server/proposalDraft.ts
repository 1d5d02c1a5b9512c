import { z } from 'zod'
import { agreedItems, itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import { placesOf } from '../../../lib/core/shares/itemShares.ts'
import { readPart } from '../../../lib/forms/parts.ts'
import { type NotebookDocument, readDocument } from '../../../lib/forms/readNotebook.ts'
import { tidyDraft } from '../../../lib/forms/tidyDraft.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import type { Proposal, ProposedItem } from '../../../lib/store/proposals.ts'
import { withSeen } from './proposalSeen.ts'
import { isFitting, proposedNow } from './proposedNow.ts'

/** One item in the form: whether something is proposed for it, what it was when the form was opened, and how it is to be shared. */
export type DraftItem = {
  readonly id: string
  readonly fingerprint: string
  /** What a mark on it stood for when the form was opened. */
  readonly agreed?: string | undefined
  readonly in: boolean
  /** Everything else that the answered proposal has for it is kept. */
  readonly theirs: boolean
  readonly share: unknown
}

export type ProposalDraft = {
  readonly manner: 'each' | 'one'
  /** For all items that are in, where one way is to do for all. */
  readonly share: unknown
  readonly text: string
  readonly items: readonly DraftItem[]
}

const equal = { principle: 'equal' }

/**
 * What the form begins with: the items as they are shared now or, in an answer, as the answered proposal has them.
 *
 * @param begun shares to begin with instead, by the ids of their items
 */
export function startingDraft(
  document: NotebookDocument,
  picked: readonly string[],
  answered: Proposal | undefined,
  begun: ReadonlyMap<string, unknown> = new Map(),
): ProposalDraft {
  const items = itemsIn(document).map(({ id, item, fingerprint, agreed }) => {
    const theirs = usable(document, answered, id)
    return {
      id,
      fingerprint,
      agreed,
      in: picked.includes(id) || theirs !== undefined || begun.has(id),
      theirs: theirs !== undefined,
      share: begun.get(id) ?? (theirs ?? item).share,
    }
  })
  return { manner: 'each', share: { materials: equal, labour: equal }, text: '', items }
}

/** The version of all items that a page was made from: what they say, and what a mark on them stands for. */
export function itemsBase(document: NotebookDocument): string {
  return fingerprintOf(itemsIn(document).map(({ id, fingerprint, agreed }) => [id, fingerprint, agreed]))
}

function itemsIn(document: NotebookDocument) {
  const read = readDocument(document)
  const places = read.ok ? placesOf(read.value.notebook) : []
  const agreed = new Map(agreedItems(document).map(({ key, inputs }) => [key, fingerprintOf(inputs)]))
  return places.flatMap(({ item: { id } }) => {
    const item = readPart(document, { part: 'item', id })
    return item === undefined
      ? []
      : [{ id, item, fingerprint: fingerprintOf(item), agreed: agreed.get(itemKey(id)) ?? '' }]
  })
}

/** What the answered proposal has for an item, on the item as it is now; undefined where it can't be taken over. */
export function usable(
  document: NotebookDocument,
  answered: Proposal | undefined,
  id: string,
): Readonly<Record<string, unknown>> | undefined {
  const proposed = answered?.items.find((one) => one.id === id)
  const found = proposed && proposedNow(document, proposed)
  return found !== undefined && isFitting(found) ? found.item : undefined
}

const draftSchema = z.object({
  manner: z.enum(['each', 'one']),
  share: z.unknown(),
  text: z.string(),
  items: z
    .array(
      z.object({
        id: z.string().min(1),
        fingerprint: z.string(),
        agreed: z.string().optional(),
        in: z.boolean(),
        theirs: z.boolean(),
        share: z.unknown(),
      }),
    )
    .max(10_000)
    .refine((items) => new Set(items.map(({ id }) => id)).size === items.length),
})

/** A draft as the form sends it; undefined for whatever is none. What its shares must be is decided where a notebook is read. */
export function readProposalDraft(draft: unknown): ProposalDraft | undefined {
  const read = draftSchema.safeParse(draft)
  return read.success ? read.data : undefined
}

/** The items that a draft proposes, on the items as they are now; one that is gone stays as an id that nothing bears. */
export function draftedItems(
  document: NotebookDocument,
  draft: ProposalDraft,
  answered: Proposal | undefined,
): readonly ProposedItem[] {
  return draft.items
    .filter((one) => one.in)
    .map((one) => {
      const now = readPart(document, { part: 'item', id: one.id })
      const found = (one.theirs ? usable(document, answered, one.id) : undefined) ?? now ?? {}
      // A way to share that is proposed for a common cost means that it is shared by itself, not laid on the others.
      const { spread: _laid, ...base } = found as Record<string, unknown>
      const share = draft.manner === 'one' ? draft.share : one.share
      const item = tidyDraft({ ...base, share }, base) as Record<string, unknown>
      return {
        id: one.id,
        fingerprint: now === undefined ? '' : fingerprintOf(now),
        ...(now && { was: now }),
        item,
      }
    })
}

/**
 * What a draft proposes, with what its household had before it where that is what stands now: the whole form is of this
 * version (`base`), or the item in it is. Of any other item it is not known what the household saw.
 */
export function draftedAsSeen(
  document: NotebookDocument,
  draft: ProposalDraft,
  answered: Proposal | undefined,
  base: string,
): readonly ProposedItem[] {
  const items = draftedItems(document, draft, answered)
  if (base === itemsBase(document)) return withSeen(document, items)
  const now = new Map(itemsIn(document).map(({ id, agreed }) => [id, agreed]))
  const opened = new Map(draft.items.map(({ id, agreed }) => [id, agreed]))
  const seen = withSeen(document, items)
  return items.map((item, at) => (opened.get(item.id) === now.get(item.id) ? (seen[at] ?? item) : item))
}
