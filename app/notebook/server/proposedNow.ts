import { readPart } from '../../../lib/forms/parts.ts'
import { proposedOnto } from '../../../lib/forms/proposedOnto.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { fingerprintOf } from '../../../lib/store/fingerprint.ts'
import type { ProposedItem } from '../../../lib/store/proposals.ts'
import { type Difference, differences } from '../../../lib/words/differences.ts'
import { namesIn } from './namesIn.ts'

type Item = Readonly<Record<string, unknown>>

/** What is proposed for an item, on the item as the notebook has it now. */
export type ProposedNow = { readonly id: string } & (
  | { readonly since: 'gone' }
  /** It can be taken over: `item` is the item as it is now with what is proposed in it. `changed`: what else was changed since. */
  | {
      readonly since: 'as it was' | 'moved on'
      readonly now: Item
      readonly item: Item
      readonly changed: readonly Difference[]
    }
  /** What it proposes was itself changed since: these keys, and how; empty where that is not known any more. */
  | {
      readonly since: 'changed'
      readonly now: Item
      readonly keys: readonly string[]
      readonly changed: readonly Difference[]
    }
)

/** What can be taken into the plan of what was proposed. */
export type Fitting = Extract<ProposedNow, { readonly since: 'as it was' | 'moved on' }>

export function proposedNow(document: NotebookDocument, proposed: ProposedItem): ProposedNow {
  const { id, fingerprint, was, item } = proposed
  const known = { currency: String(document.currency), names: namesIn(document) }
  const now = readPart(document, { part: 'item', id })
  if (now === undefined) return { id, since: 'gone' }
  if (fingerprintOf(now) === fingerprint) return { id, since: 'as it was', now, item, changed: [] }
  if (was === undefined) return { id, since: 'changed', now, keys: [], changed: [] }
  const onto = proposedOnto(was, item, now)
  if (onto.kind === 'fits')
    return {
      id,
      since: 'moved on',
      now,
      item: { ...onto.item, id },
      changed: differences(was, now, known),
    }
  const only = (from: Item) => Object.fromEntries(onto.keys.map((key) => [key, from[key]]))
  return { id, since: 'changed', now, keys: onto.keys, changed: differences(only(was), only(now), known) }
}

export function isFitting(one: ProposedNow): one is Fitting {
  return one.since === 'as it was' || one.since === 'moved on'
}
