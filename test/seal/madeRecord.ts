import type { Signature } from '../../lib/core/agreement/revision.ts'
import { signingParties } from '../../lib/core/agreement/revision.ts'
import type { ReadNotebook } from '../../lib/forms/readNotebook.ts'
import { summaryPdf } from '../../lib/pdf/summaryPdf.ts'
import { makeSealKey, type SealKey } from '../../lib/seal/certificate.ts'
import { sealPdf } from '../../lib/seal/sealPdf.ts'
import { notebookWith, signatureOf, summaryInputFor } from '../pdf/madeSummary.ts'

/** When the keys and the seals of the tests are made. */
export const madeAt = new Date('2027-03-01T08:00:00Z')
export const sealedAt = new Date('2027-03-04T20:01:00Z')

let key: Promise<SealKey> | undefined

/** One key for a whole file of tests: making one takes a while. */
export function oneKey(): Promise<SealKey> {
  key ??= makeSealKey(madeAt)
  return key
}

/** A small notebook that can be signed: one party a household, one common cost. */
export function smallNotebook(more: Record<string, unknown> = {}): ReadNotebook {
  return notebookWith({
    title: 'The lane fence',
    households: {
      a: { name: 'Upper Mill', parties: [{ name: 'Ada Holm', capacity: 'owner' }] },
      b: { name: 'Lower Mill', parties: [{ name: 'Ben Rook', capacity: 'owner' }] },
    },
    common: [
      {
        id: 'c1',
        name: 'Skip',
        materials: [{ what: 'skip', quantity: '1', unit: 'each', unitPrice: '120.01', suppliedBy: 'bought' }],
        share: { together: { principle: 'equal' } },
      },
    ],
    ...more,
  })
}

/** A signature of every party. */
export function allSignatures(read: ReadNotebook): Signature[] {
  return signingParties(read.notebook).map(({ household, partyIndex }) =>
    signatureOf(read, household, partyIndex),
  )
}

/** The paper of a notebook that every party has signed, not sealed yet. */
export function signedPaper(read: ReadNotebook, signatures = allSignatures(read)): Promise<Uint8Array> {
  return summaryPdf({
    ...summaryInputFor(read, { standing: { kind: 'signed' }, signatures }),
    madeAt: sealedAt,
  })
}

/** The same, sealed. */
export async function sealedRecord(read: ReadNotebook = smallNotebook()): Promise<Buffer> {
  return Buffer.from(await sealPdf(await signedPaper(read), await oneKey(), sealedAt))
}

/** A copy with bytes changed at one place. */
export function withBytes(pdf: Uint8Array, at: number, bytes: Uint8Array | string): Buffer {
  const copy = Buffer.from(pdf)
  copy.set(typeof bytes === 'string' ? Buffer.from(bytes, 'latin1') : bytes, at)
  return copy
}
