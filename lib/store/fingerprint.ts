import { canonicalText } from '../core/agreement/canonicalText.ts'
import { sha256Hex } from './sha256.ts'

/** SHA-256 of the canonical form of JSON data: the same for the same data, whatever the order of its keys. */
export function fingerprintOf(data: unknown): string {
  return sha256Hex(canonicalText(data))
}
