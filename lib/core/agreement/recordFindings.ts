import type { Minor } from '../amounts/money.ts'
import type { Fault } from '../faults.ts'
import type { ForBoth, Household } from '../people/household.ts'

/** What looking through a PDF that claims to be a locked copy brought to light. */
export type RecordFindings = {
  /** The seal holds over the whole file, and everything in it agrees: there are no problems. */
  readonly holds: boolean
  /** Size of the file. */
  readonly bytes: number
  /** Every reason why not, in the order in which it was looked for. */
  readonly problems: readonly RecordProblem[]
  /** The seal, where it holds over the whole file. */
  readonly seal?: RecordSeal
  /** The notebook file inside, where there is exactly one and it can be unpacked. `sha256` is worked out from its bytes. */
  readonly agreement?: { readonly sha256: string; readonly title?: string; readonly names?: ForBoth<string> }
  /** The hash of the notebook file as the pages print it, where all print the same. */
  readonly printedSha256?: string
  /** What the shares come to, worked out again from the notebook file. */
  readonly asked?: RecordSums
  readonly signatures?: readonly RecordSignature[]
}

export type RecordSeal = {
  /** SHA-256 of the certificate that the seal carries, 64 hexadecimal digits. */
  readonly certificateSha256: string
  /** The signing time as the seal states it, by the clock of the install that made it. */
  readonly sealedAt?: Date
}

/** Asked of each household after caps, in minor units. */
export type RecordSums = ForBoth<Minor> & { readonly currency: string; readonly total: Minor }

export type RecordSignature = {
  readonly household: Household
  readonly partyName: string
  readonly signedAt: Date
}

/** Whether the record is the newest revision of its notebook: only the install that keeps the notebook can tell. */
export type RecordRevision =
  | { readonly kind: 'not kept here' }
  | { readonly kind: 'newest'; readonly number: number }
  | { readonly kind: 'older'; readonly number: number; readonly newest: number }

/** One reason why a PDF is no locked copy that holds. */
export type RecordProblem =
  // the file
  | { readonly kind: 'too-large'; readonly bytes: number; readonly limit: number }
  | { readonly kind: 'not-a-pdf' }
  | { readonly kind: 'cut-short' }
  | { readonly kind: 'encrypted' }
  /** A PDF, but not built the one way in which this program builds its own; `detail` says where it differs. */
  | { readonly kind: 'other-build'; readonly detail: string }
  | { readonly kind: 'too-deep'; readonly limit: number }
  | {
      readonly kind: 'too-much'
      readonly what: 'objects' | 'values' | 'unpacked bytes'
      readonly limit: number
    }
  // the seal
  | { readonly kind: 'no-seal' }
  | { readonly kind: 'several-seals'; readonly count: number }
  | { readonly kind: 'added-after'; readonly bytes: number }
  | { readonly kind: 'range-open' }
  | { readonly kind: 'bytes-changed' }
  | { readonly kind: 'seal-broken' }
  | { readonly kind: 'seal-form' }
  | { readonly kind: 'other-certificate'; readonly expected: string; readonly found: string }
  // the notebook file inside
  | { readonly kind: 'no-agreement' }
  /** Instead of `no-agreement`: the pages are those of a final account, which is never locked. `sha256` as they print it. */
  | { readonly kind: 'final-account'; readonly sha256: string }
  | { readonly kind: 'several-agreements'; readonly count: number }
  | { readonly kind: 'agreement-damaged' }
  | { readonly kind: 'agreement-refused'; readonly faults: readonly Fault[] }
  // what is printed
  | { readonly kind: 'pages-unreadable' }
  | { readonly kind: 'hash-not-printed'; readonly page: number }
  | { readonly kind: 'hash-differs'; readonly page: number; readonly printed: string; readonly found: string }
  | { readonly kind: 'statement-refused'; readonly faults: readonly Fault[] }
  | { readonly kind: 'sums-not-printed' }
  // the signatures inside
  | { readonly kind: 'no-signatures' }
  | { readonly kind: 'signatures-damaged' }
  | { readonly kind: 'signed-other-text' }
  | { readonly kind: 'parties-unsigned'; readonly names: readonly string[] }
