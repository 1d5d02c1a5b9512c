import type { Household } from '../people/household.ts'
import { households } from '../people/household.ts'
import { agreedItems, changedItems } from './agreedItems.ts'
import { agreementText } from './canonicalText.ts'

/** Who has marked an item as it is now. */
export type Marks = 'both' | Household | 'none'

/**
 * Where an item stands. What both marked and nobody changed since it was signed is agreed; what differs from what all have
 * signed is changed, whoever has marked it meanwhile. Without a signature, an item that was edited and has no mark is
 * changed, one that was never agreed on is open.
 */
export type ItemStatus =
  | { readonly kind: 'agreed' }
  | { readonly kind: 'marked by one'; readonly by: Household }
  | { readonly kind: 'open' }
  | { readonly kind: 'changed' }
  | {
      readonly kind: 'changed since signed'
      /** Number of the revision that all have signed. */
      readonly revision: number
      /** It was not in that revision at all. */
      readonly added: boolean
      readonly marks: Marks
    }

/** What a status looks like, at a glance and in drawings: four, told apart by pattern. */
export const statusLooks = ['agreed', 'one', 'open', 'changed'] as const
export type StatusLook = (typeof statusLooks)[number]

export function itemStatus(standing: {
  readonly marked: { readonly a: boolean; readonly b: boolean }
  /** It was edited after it had been written. */
  readonly edited: boolean
  /** How it differs from the newest revision that all have signed; undefined where it does not, or nothing is signed. */
  readonly sinceSigned?: { readonly revision: number; readonly added: boolean } | undefined
}): ItemStatus {
  const marks = marksOf(standing.marked)
  if (standing.sinceSigned) return { kind: 'changed since signed', ...standing.sinceSigned, marks }
  if (marks === 'both') return { kind: 'agreed' }
  if (marks !== 'none') return { kind: 'marked by one', by: marks }
  return { kind: standing.edited ? 'changed' : 'open' }
}

export function lookOf({ kind }: ItemStatus): StatusLook {
  switch (kind) {
    case 'agreed':
      return 'agreed'
    case 'marked by one':
      return 'one'
    case 'open':
      return 'open'
    case 'changed':
    case 'changed since signed':
      return 'changed'
  }
}

function marksOf(marked: { readonly a: boolean; readonly b: boolean }): Marks {
  const [only, other] = households.filter((household) => marked[household])
  return other ? 'both' : (only ?? 'none')
}

type Document = { readonly [key: string]: unknown }

/**
 * The items that differ from a signed revision, by key, each with whether it is new since. Receipts and what they came to
 * are no part of what is signed, so they change nothing here.
 *
 * @param signedText canonical text of the revision
 */
export function changedSinceSigned(
  document: Document,
  signedText: string,
): ReadonlyMap<string, { readonly added: boolean }> {
  const is = JSON.parse(agreementText(document)) as Document
  const was = JSON.parse(signedText) as Document
  const standing = new Set(agreedItems(is).map(({ key }) => key))
  return new Map(
    changedItems(was, is)
      .filter(({ itemKey }) => standing.has(itemKey))
      .map((change) => [change.itemKey, { added: change.before === undefined }]),
  )
}
