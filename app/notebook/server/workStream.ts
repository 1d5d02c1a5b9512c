import { holdRequest } from './heldRequest.ts'

/** How the work goes: as many lines as it likes, each one JSON object. */
export type Tell = (line: Readonly<Record<string, unknown>>) => void

/**
 * An answer that tells how long work goes on: a line of JSON at each step, and what it came to as the last one. When the
 * browser goes away or stops it, `stop` is aborted, so that the work can end; a line `{"broke":true}` is the last where
 * something failed.
 *
 * @param request what asked for the work: its signal ends it
 */
export function workStream(
  request: Request,
  work: (tell: Tell, stop: AbortSignal) => Promise<Readonly<Record<string, unknown>>>,
): Response {
  const given = new AbortController()
  const letGo = holdRequest(request)
  const stop = AbortSignal.any([request.signal, given.signal])
  const encoder = new TextEncoder()
  const body = new ReadableStream<Uint8Array>({
    async start(controller) {
      const tell: Tell = (line) => {
        if (!stop.aborted) controller.enqueue(encoder.encode(`${JSON.stringify(line)}\n`))
      }
      try {
        tell(await work(tell, stop))
      } catch (error) {
        if (!stop.aborted) console.error('Long work came to nothing.', error)
        tell({ broke: true })
      } finally {
        letGo()
      }
      // A stream that was cancelled is closed already.
      if (!given.signal.aborted) controller.close()
    },
    cancel: () => given.abort(),
  })
  return new Response(body, {
    headers: {
      'Content-Type': 'application/x-ndjson; charset=utf-8',
      // Not to be compressed either: that would hold lines back until there are enough of them.
      'Cache-Control': 'private, no-store, no-transform',
      'X-Accel-Buffering': 'no',
    },
  })
}

/** Work for one answer that heeds the request's signal: where the browser is gone by then, nobody reads the answer. */
export async function unlessGone(request: Request, work: () => Promise<Response>): Promise<Response> {
  const letGo = holdRequest(request)
  try {
    return await work()
  } catch (error) {
    if (request.signal.aborted) return new Response(null, { status: 499 })
    throw error
  } finally {
    letGo()
  }
}

/** Lets what was told get out, and whoever else waits have a turn, before work goes on that holds the thread. */
export async function nextTurn(stop: AbortSignal | undefined): Promise<void> {
  await new Promise((resolve) => setImmediate(resolve))
  stop?.throwIfAborted()
}
