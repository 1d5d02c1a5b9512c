'use client'

/** What the last line of the work says; `lost`: no answer, `broke`: the server failed. */
export type WorkEnd =
  | { readonly kind: 'told'; readonly line: Readonly<Record<string, unknown>> }
  | { readonly kind: 'stopped' | 'lost' | 'broke' }

/**
 * Asks the server for work that tells how far it is, line by line, and hands on each line as it comes. Stopping ends the
 * request itself, so that the server ends the work too.
 */
export function askForWork(
  address: string,
  sends: File | undefined,
  stop: AbortSignal,
  hear: {
    readonly onSent?: (bytes: number) => void
    readonly onLine: (line: Readonly<Record<string, unknown>>) => void
  },
): Promise<WorkEnd> {
  return new Promise((resolve) => {
    if (stop.aborted) return resolve({ kind: 'stopped' })
    // Not fetch, which can't tell how much of a body has been sent.
    const request = new XMLHttpRequest()
    let read = 0
    let last: Readonly<Record<string, unknown>> | undefined
    const readOn = () => {
      const text = request.responseText
      for (let end = text.indexOf('\n', read); end !== -1; end = text.indexOf('\n', read)) {
        last = JSON.parse(text.slice(read, end)) as Readonly<Record<string, unknown>>
        read = end + 1
        hear.onLine(last)
      }
    }
    request.open('POST', address)
    request.setRequestHeader('Content-Type', 'application/octet-stream')
    request.upload.onprogress = (event) => hear.onSent?.(event.loaded)
    request.onprogress = () => {
      if (request.status === 200) readOn()
    }
    request.onload = () => {
      if (request.status !== 200) return resolve(saidInstead(request.responseText))
      readOn()
      resolve(last === undefined || 'broke' in last ? { kind: 'broke' } : { kind: 'told', line: last })
    }
    request.onerror = () => resolve({ kind: 'lost' })
    request.onabort = () => resolve({ kind: 'stopped' })
    stop.addEventListener('abort', () => request.abort(), { once: true })
    request.send(sends ?? null)
  })
}

/** Where no work was begun: the refusal that came in its place, else that the server failed. */
function saidInstead(text: string): WorkEnd {
  try {
    const line: unknown = JSON.parse(text)
    if (line !== null && typeof line === 'object' && 'refused' in line)
      return { kind: 'told', line: line as Readonly<Record<string, unknown>> }
  } catch {
    // No answer of ours.
  }
  return { kind: 'broke' }
}
