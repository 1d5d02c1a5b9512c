import type { FileDamage } from '../../../lib/core/agreement/fileRefusal.ts'
import { savedName } from '../../../lib/files/fileNames.ts'
import type { StoredFile } from '../../../lib/store/storedFiles.ts'
import { fileDamageText } from '../../../lib/words/fileText.ts'

/**
 * What a file, which somebody else made, may do in a browser: nothing but be shown. next.config.js says the same for its
 * address, since what that says goes first.
 */
const contained = "default-src 'none'; style-src 'unsafe-inline'; img-src 'self' data:; sandbox"

/** The browser keeps it and asks each time whether it may still show it: whoever left is not shown it again. */
const heldAndAsked = 'private, no-cache'

/** The tag of a stored file, by which a browser that holds it asks again. */
export function tagOf(file: StoredFile, which: 'whole' | 'small'): string {
  return `"${file.sha256}${which === 'small' ? '-small' : ''}"`
}

/** Answers that what the browser holds still stands; undefined where it holds something else. */
export function stillStands(request: Request, tag: string): Response | undefined {
  const held = (request.headers.get('if-none-match') ?? '')
    .split(',')
    .map((one) => one.trim().replace(/^W\//, ''))
  return held.includes(tag)
    ? new Response(null, { status: 304, headers: { ETag: tag, 'Cache-Control': heldAndAsked } })
    : undefined
}

/** A file for its households: a photo to be shown, a PDF to be saved. The type is that of its content. */
export function fileAnswer(
  file: StoredFile,
  bytes: Uint8Array,
  options: { readonly tag: string; readonly mimeType: string; readonly save: boolean },
): Response {
  const how = options.save || options.mimeType === 'application/pdf' ? 'attachment' : 'inline'
  return new Response(new Uint8Array(bytes), {
    headers: {
      'Content-Type': options.mimeType,
      'Content-Disposition': `${how}; filename="${savedName(file.name, file.mediaType)}"`,
      'Content-Length': String(bytes.byteLength),
      'Content-Security-Policy': contained,
      'X-Content-Type-Options': 'nosniff',
      'Cross-Origin-Resource-Policy': 'same-origin',
      'Cache-Control': heldAndAsked,
      ETag: options.tag,
    },
  })
}

/** Says in words what is wrong with a file on disk: never other bytes than those that were kept. */
export function damageAnswer(damage: FileDamage): Response {
  return new Response(`${fileDamageText(damage)}\n`, {
    status: damage === 'missing' ? 410 : 500,
    headers: { 'Content-Type': 'text/plain; charset=utf-8', 'Cache-Control': 'private, no-store' },
  })
}
