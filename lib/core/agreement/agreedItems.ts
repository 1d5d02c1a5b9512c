import { beyondInDocument } from '../ledger/documentBooks.ts'
import { canonicalText } from './canonicalText.ts'
import type { ItemKind } from './notebook.ts'

/** What the households agree on, item by item. */
export type AgreedItem = {
  /** Stable name of the item inside its notebook: `line`, `parties`, `caps`, `arrangements`, `terms`, `item:s1`, `decision:…`, `closing`. */
  readonly key: string
  readonly kind: 'parties' | 'line' | 'caps' | 'arrangements' | 'terms' | 'decision' | 'closing' | ItemKind
  /** Where it stands in the file: `sections[0]`; a list or an object of its own otherwise. */
  readonly path: string
  /** Name as typed; empty where it has none. */
  readonly name: string
  /** Everything a mark stands for. A mark holds only as long as these are the same data. */
  readonly inputs: unknown
}

type Document = { readonly [key: string]: unknown }

/**
 * All items of a notebook that both households mark, in the order of the file. Taken from the document itself, so that
 * keys the format does not know are covered by a mark too. Money means nothing without its currency, so a change of
 * currency changes every item that holds money. So does what an item came to, once that is beyond the tolerance: marks on
 * it are then for exactly that figure. Nothing of the books is signed, so in what is signed there is no such figure.
 */
export function agreedItems(document: Document): readonly AgreedItem[] {
  const currency = document.currency
  const beyond = beyondInDocument(document)
  const priced = (kind: ItemKind, list: string) =>
    objectsOf(document[list]).map((item, index) => ({
      key: itemKey(String(item.id)),
      kind,
      path: `${list}[${index}]`,
      name: typeof item.name === 'string' ? item.name : '',
      inputs: { currency, item, ...costBeyond(beyond.get(String(item.id))) },
    }))
  return [
    { key: 'parties', kind: 'parties', path: 'households', name: '', inputs: document.households ?? {} },
    { key: 'line', kind: 'line', path: 'line', name: '', inputs: document.line ?? {} },
    ...priced('section', 'sections'),
    ...priced('gate', 'gates'),
    ...priced('common', 'common'),
    { key: 'caps', kind: 'caps', path: 'caps', name: '', inputs: { currency, caps: document.caps ?? {} } },
    ...(document.arrangements === undefined || document.arrangements === null
      ? []
      : [
          {
            key: 'arrangements',
            kind: 'arrangements' as const,
            path: 'arrangements',
            name: '',
            inputs: { currency, arrangements: document.arrangements },
          },
        ]),
    { key: 'terms', kind: 'terms', path: 'terms', name: '', inputs: document.terms ?? [] },
    ...objectsOf(document.decisions).map((decision, index) => ({
      key: decisionKey(decision),
      kind: 'decision' as const,
      path: `decisions[${index}]`,
      name: typeof decision.text === 'string' ? decision.text : '',
      inputs: decision,
    })),
    ...(document.closing === undefined || document.closing === null
      ? []
      : [{ key: 'closing', kind: 'closing' as const, path: 'closing', name: '', inputs: document.closing }]),
  ]
}

function costBeyond(beyondTolerance: string | undefined) {
  return beyondTolerance === undefined ? {} : { beyondTolerance }
}

/** The key of what belongs to no one item: links, revisions, signatures. */
export const wholeNotebook = 'notebook'

export function itemKey(id: string): string {
  return `item:${id}`
}

/** The id of the section, gate or common cost that a key names; undefined for every other item. */
export function idOfItemKey(key: string): string | undefined {
  return key.startsWith('item:') ? key.slice('item:'.length) : undefined
}

/** A decision has no id: it is told by what it says, so a changed decision is another one and has no marks. */
export function decisionKey(decision: unknown): string {
  return `decision:${canonicalText(decision)}`
}

/** One item that differs between two states of a notebook; `before` is missing on a new one, `after` on a removed one. */
export type ChangedItem = { readonly itemKey: string; readonly before?: unknown; readonly after?: unknown }

/** The items whose inputs differ between two documents. */
export function changedItems(before: Document, after: Document): readonly ChangedItem[] {
  const inputsBefore = new Map(agreedItems(before).map((item) => [item.key, item.inputs]))
  const inputsAfter = new Map(agreedItems(after).map((item) => [item.key, item.inputs]))
  const keys = [...new Set([...inputsBefore.keys(), ...inputsAfter.keys()])]
  return keys.flatMap((key) => {
    const [was, is] = [inputsBefore.get(key), inputsAfter.get(key)]
    if (was !== undefined && is !== undefined && canonicalText(was) === canonicalText(is)) return []
    return [
      {
        itemKey: key,
        ...(was === undefined ? {} : { before: was }),
        ...(is === undefined ? {} : { after: is }),
      },
    ]
  })
}

/**
 * Whether all that a change did to an item is that it is dearer than planned by less than before, or within the tolerance
 * again. Whoever marked it at more has marked this too, so its marks stay.
 */
export function onlyCameCheaper({ before, after }: Pick<ChangedItem, 'before' | 'after'>): boolean {
  const [was, is] = [costApart(before), costApart(after)]
  if (was?.cost === undefined || is === undefined) return false
  if (canonicalText(was.rest) !== canonicalText(is.rest)) return false
  return is.cost === undefined || is.cost < was.cost
}

/** What an item costs beyond the tolerance, and everything else that its marks stand for. */
function costApart(
  inputs: unknown,
): { readonly cost: bigint | undefined; readonly rest: unknown } | undefined {
  if (inputs === null || typeof inputs !== 'object') return undefined
  const { beyondTolerance: cost, ...rest } = inputs as Record<string, unknown>
  // Of one currency, so both have the same digits after the point.
  return { cost: typeof cost === 'string' ? BigInt(cost.replace('.', '')) : undefined, rest }
}

function objectsOf(list: unknown): Record<string, unknown>[] {
  return Array.isArray(list) ? (list as Record<string, unknown>[]) : []
}
