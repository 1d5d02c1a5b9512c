import type { Pack } from '../../../lib/files/recordPack.ts'
import { download, fileName, streamed } from '../../notebook/server/download.ts'
import type { ReaderOpening } from './opening.ts'

/**
 * A file for a reader, as it is whole. The address is the secret: it goes to no other site, stays in no cache on the way, and no search
 * engine lists it. next.config.js says the same for the pages.
 */
export function fileForReader(
  opening: ReaderOpening,
  body: string | Uint8Array,
  ending: string,
  mimeType: 'application/pdf' | 'application/json',
): Response {
  return kept(download(body, fileName(titleFor(opening), ending), mimeType))
}

/** A file for a reader that is sent as it is made. */
export function streamForReader(
  opening: ReaderOpening,
  pack: Pack,
  ending: string,
  mimeType: 'application/zip',
): Response {
  return kept(streamed(pack, titleFor(opening), ending, mimeType))
}

function kept(response: Response): Response {
  response.headers.set('Referrer-Policy', 'no-referrer')
  response.headers.set('X-Robots-Tag', 'noindex, nofollow')
  return response
}

/** The draft may be called otherwise by now, and only a link to everything shows it. */
function titleFor({ signed, notebook }: ReaderOpening): string {
  return (signed?.notebook ?? notebook).title
}
