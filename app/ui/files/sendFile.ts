'use client'

import { fileSentRefusals } from '../../../lib/words/fileText.ts'
import { uploadWords } from './uploadWords.ts'

/** What goes with a file. */
export type About = { readonly kind: string; readonly caption: string; readonly item: string }
export type Sent = { readonly added: string } | { readonly refused: string } | { readonly stopped: true }

/**
 * The address of the file upload takes one file as the body, and what is about it in one header. `sending` names this one, to
 * stop it by once all of it is sent; `stop` ends it before that.
 */
export function sendFile(
  address: string,
  file: File,
  about: About & { readonly sending: string },
  onSent: (fraction: number) => void,
  stop: AbortSignal,
): Promise<Sent> {
  return new Promise((resolve) => {
    if (stop.aborted) return resolve({ stopped: true })
    // Not fetch, which can't tell how much of a body has been sent.
    const request = new XMLHttpRequest()
    const { name } = file
    request.open('POST', address)
    request.setRequestHeader('Content-Type', 'application/octet-stream')
    request.setRequestHeader(
      'X-Mearing-File',
      encodeURIComponent(JSON.stringify({ name: name.toWellFormed().slice(-300), ...about })),
    )
    request.upload.onprogress = (event) => onSent(event.lengthComputable ? event.loaded / event.total : 0)
    request.upload.onload = () => onSent(1)
    request.onload = () => resolve(readAnswer(request, name))
    request.onerror = () => resolve({ refused: uploadWords.lost(name) })
    request.onabort = () => resolve({ stopped: true })
    stop.addEventListener('abort', () => request.abort(), { once: true })
    request.send(file)
  })
}

/** Asks the server to stop a sending that is all there. Where this gets lost, the sending goes on and says so. */
export async function stopChecking(address: string, sending: string): Promise<void> {
  await fetch(`${address}?sending=${sending}`, { method: 'DELETE' }).catch(() => undefined)
}

function readAnswer(request: XMLHttpRequest, name: string): Sent {
  if (request.status === 404) return { refused: fileSentRefusals.shutOut }
  try {
    const said: unknown = JSON.parse(request.responseText)
    if (said !== null && typeof said === 'object') {
      if ('stopped' in said) return { stopped: true }
      if ('added' in said) return { added: String(said.added) }
      if ('refused' in said) return { refused: String(said.refused) }
    }
  } catch {
    // No answer of ours: said below.
  }
  return { refused: uploadWords.broke(name) }
}
