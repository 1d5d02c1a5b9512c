import { itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import {
  changedSinceSigned,
  type ItemStatus,
  itemStatus,
  lookOf,
} from '../../../lib/core/agreement/itemStatus.ts'
import type { DrawnStandings } from '../../../lib/drawing/statusRails.ts'
import type { Opened, Standing } from './opened.ts'
import { standingOf } from './standingOf.ts'

/** What changed since the newest revision that all have signed. */
export type SinceSigned = { readonly revision: number; readonly keys: ReturnType<typeof changedSinceSigned> }

/** Undefined where nothing is signed yet. */
export function sinceSigned({ revisions, document }: Opened): SinceSigned | undefined {
  const signed = revisions.find(({ stillToSign }) => stillToSign.length === 0)
  if (signed === undefined) return undefined
  const { number, canonicalText } = signed.revision
  return { revision: number, keys: changedSinceSigned(document, canonicalText) }
}

/** Where an item stands, as the core decides it. Without `since`, as its marks alone tell. */
export function statusOf({ item, markedAt, lastChange }: Standing, since?: SinceSigned): ItemStatus {
  const change = since?.keys.get(item.key)
  return itemStatus({
    marked: { a: markedAt.a !== undefined, b: markedAt.b !== undefined },
    edited: lastChange?.before !== undefined && lastChange.before !== null,
    sinceSigned: since && change && { revision: since.revision, added: change.added },
  })
}

/** How each section and gate looks on the drawing. */
export function drawnStandings(opened: Opened, since: SinceSigned | undefined): DrawnStandings {
  const look = ({ id }: { readonly id: string }) => lookOf(statusOf(standingOf(opened, itemKey(id)), since))
  return { sections: opened.notebook.sections.map(look), gates: opened.notebook.gates.map(look) }
}
