import type { Notebook } from '../core/agreement/notebook.ts'
import type { RecordProblem, RecordSignature } from '../core/agreement/recordFindings.ts'
import { signingParties } from '../core/agreement/revision.ts'
import { isObject } from '../forms/readNotebook.ts'

type Signed = RecordSignature & { readonly partyIndex: number; readonly sha256: string }

/** Reads `signatures.json` and holds it against the agreement: every party has signed, each for this very text. */
export function signaturesInside(
  bytes: Uint8Array,
  sha256: string,
  notebook: Notebook,
): { readonly signatures?: readonly RecordSignature[]; readonly problems: readonly RecordProblem[] } {
  const signed = read(bytes)
  if (signed === undefined) return { problems: [{ kind: 'signatures-damaged' }] }
  const signatures = signed.map(({ household, partyName, signedAt }) => ({ household, partyName, signedAt }))
  const other = signed.some((one) => one.sha256 !== sha256)
  const unsigned = signingParties(notebook).filter(
    (place) =>
      !signed.some(
        (one) =>
          one.household === place.household &&
          one.partyIndex === place.partyIndex &&
          one.partyName === place.name,
      ),
  )
  return {
    signatures,
    problems: [
      ...(other ? [{ kind: 'signed-other-text' as const }] : []),
      ...(unsigned.length > 0
        ? [{ kind: 'parties-unsigned' as const, names: unsigned.slice(0, 12).map(({ name }) => name) }]
        : []),
    ],
  }
}

function read(bytes: Uint8Array): Signed[] | undefined {
  let data: unknown
  try {
    data = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes))
  } catch {
    return undefined
  }
  if (!Array.isArray(data) || data.length === 0 || data.length > 1000) return undefined
  const signed = data.map(signedOf)
  return signed.every((one) => one !== undefined) ? signed : undefined
}

function signedOf(data: unknown): Signed | undefined {
  if (!isObject(data)) return undefined
  const { household, partyIndex, partyName, sha256, signedAt } = data
  const at = new Date(typeof signedAt === 'string' ? signedAt : Number.NaN)
  return (household === 'a' || household === 'b') &&
    typeof partyIndex === 'number' &&
    typeof partyName === 'string' &&
    typeof sha256 === 'string' &&
    !Number.isNaN(at.getTime())
    ? { household, partyIndex, partyName, sha256, signedAt: at }
    : undefined
}
