import { createHash } from 'node:crypto'

/** SHA-256 as 64 hexadecimal digits, reckoned by Node and not by the program. */
export function sha256(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex')
}
