import { createHash } from 'node:crypto'

/** SHA-256 as 64 lower-case hexadecimal digits; text is hashed as UTF-8. Source: FIPS 180-4. */
export function sha256Hex(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex')
}
