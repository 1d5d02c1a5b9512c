import type { Fault } from '../faults.ts'

/** Why a proposal can't be made, or can't be accepted: what a person can mend. `items` are ids. */
export type ProposalRefusal =
  | { readonly kind: 'no items' }
  | { readonly kind: 'items gone'; readonly items: readonly string[] }
  /** What it proposes was itself changed since: each item with the keys that were; none where that is not known any more. */
  | {
      readonly kind: 'items changed'
      readonly items: readonly { readonly id: string; readonly keys: readonly string[] }[]
    }
  /** A figure for building alone comes without its source: where in which item. */
  | {
      readonly kind: 'sources missing'
      readonly at: readonly { readonly item: string; readonly path: string }[]
    }
  /** Nothing in it differs from what stands. */
  | { readonly kind: 'nothing proposed' }
  /** With it the file would not hold, or its shares could no longer be worked out. */
  | { readonly kind: 'does not hold'; readonly faults: readonly Fault[] }
  | { readonly kind: 'too long'; readonly length: number; readonly limit: number }
  /** By the revision of this number, which all have signed. */
  | { readonly kind: 'closed'; readonly revision: number }
  /** The page of the press showed its items as they are not any more. */
  | { readonly kind: 'shown otherwise' }
  | { readonly kind: 'no such proposal' }
  /** Nobody answers or accepts what they proposed themselves. */
  | { readonly kind: 'own' }
  | { readonly kind: 'ended' }
