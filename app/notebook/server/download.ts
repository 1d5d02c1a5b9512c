import type { Pack } from '../../../lib/files/recordPack.ts'

/** How many bytes an answer has, for the page that waits for it: Next takes a Content-Length out of every answer. */
const bytesHeader = 'X-Mearing-Bytes'

/** A file to save. Never kept by a cache on the way: it is private, and the next one differs. */
export function download(body: string | Uint8Array, name: string, mimeType: string): Response {
  const bytes = typeof body === 'string' ? new TextEncoder().encode(body) : body
  return new Response(new Uint8Array(bytes), {
    headers: {
      'Content-Type': mimeType,
      'Content-Disposition': `attachment; filename="${name}"`,
      'Content-Length': String(bytes.byteLength),
      [bytesHeader]: String(bytes.byteLength),
      'Cache-Control': 'private, no-store',
    },
  })
}

/** A pack to save, sent as it is made. */
export function streamed(pack: Pack, title: string, ending: string, mimeType: string): Response {
  return new Response(pack.stream, {
    headers: {
      'Content-Type': mimeType,
      'Content-Disposition': `attachment; filename="${fileName(title, ending)}"`,
      'Content-Length': String(pack.size),
      [bytesHeader]: String(pack.size),
      'Cache-Control': 'private, no-store',
    },
  })
}

/** A file name from the notebook's title: plain letters and figures, so that every system takes it. */
export function fileName(title: string, ending: string): string {
  const plain = title
    .normalize('NFD')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .toLowerCase()
  return `${plain || 'notebook'}${ending}`
}
