import { download, fileName } from '../../notebook/server/download.ts'
import type { ReaderOpening } from './opening.ts'

/**
 * A file for a reader. The address is the secret: it goes to no other site, stays in no cache on the way, and no search
 * engine lists it. next.config.js says the same for the pages.
 */
export function fileForReader(
  { signed, notebook: draft }: ReaderOpening,
  body: string | Uint8Array,
  ending: string,
  mimeType: 'application/pdf' | 'application/json',
): Response {
  // The draft may be called otherwise by now, and only a link to everything shows it.
  const { title } = signed?.notebook ?? draft
  const response = download(body, fileName(title, ending), mimeType)
  response.headers.set('Referrer-Policy', 'no-referrer')
  response.headers.set('X-Robots-Tag', 'noindex, nofollow')
  return response
}
