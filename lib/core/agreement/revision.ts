import type { Household } from '../people/household.ts'
import { households } from '../people/household.ts'
import type { Notebook } from './notebook.ts'

/** The agreement as it was put up for signing: it never changes. */
export type Revision = {
  readonly number: number
  /** Canonical form (RFC 8785) of the notebook file without its contributions. */
  readonly canonicalText: string
  /** SHA-256 of the UTF-8 bytes of `canonicalText`, 64 lower-case hexadecimal digits. */
  readonly sha256: string
  readonly frozenAt: Date
}

/** One party's signature on one revision. */
export type Signature = {
  readonly household: Household
  /** Place of the party in `households.*.parties` of the revision. */
  readonly partyIndex: number
  readonly partyName: string
  readonly capacity: string
  readonly typedName: string
  /** The sentence that was ticked. */
  readonly intent: string
  /** SVG path data in a box of 600 × 200; undefined where none was drawn. */
  readonly drawing?: string | undefined
  readonly sha256: string
  readonly signedAt: Date
}

export type PartyPlace = {
  readonly household: Household
  readonly partyIndex: number
  readonly name: string
  readonly capacity: string
}

/** Every party that has to sign, household a first, in the order of the file. */
export function signingParties(notebook: Notebook): readonly PartyPlace[] {
  return households.flatMap((household) =>
    notebook.households[household].parties.map((party, partyIndex) => ({
      household,
      partyIndex,
      name: party.name,
      capacity: party.capacity,
    })),
  )
}

/** The parties that have not signed yet. Signed by all is an empty list. */
export function partiesStillToSign(
  notebook: Notebook,
  signatures: readonly Signature[],
): readonly PartyPlace[] {
  return signingParties(notebook).filter(
    (place) =>
      !signatures.some((one) => one.household === place.household && one.partyIndex === place.partyIndex),
  )
}
