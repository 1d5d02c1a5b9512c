import type { FileRefusal } from '../core/agreement/fileRefusal.ts'

/**
 * Reads what is being sent, and stops at the first byte too many: whatever is announced, no more than `limit` bytes are
 * ever held.
 */
export async function boundedBody(
  body: ReadableStream<Uint8Array> | null,
  limit: number,
): Promise<{ readonly bytes: Uint8Array } | { readonly refused: FileRefusal }> {
  if (body === null) return { bytes: new Uint8Array() }
  const reader = body.getReader()
  const pieces: Uint8Array[] = []
  let length = 0
  try {
    for (;;) {
      const { done, value } = await reader.read()
      if (done) break
      length += value.length
      if (length > limit) {
        await reader.cancel().catch(() => undefined)
        return { refused: { kind: 'too-large', limit } }
      }
      pieces.push(value)
    }
  } catch {
    return { refused: { kind: 'broke-off' } }
  }
  const bytes = new Uint8Array(length)
  let at = 0
  for (const piece of pieces) {
    bytes.set(piece, at)
    at += piece.length
  }
  return { bytes }
}
