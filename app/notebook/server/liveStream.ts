import { pulseOf } from '../../../lib/store/pulse.ts'
import { findSession } from '../../../lib/store/sessions.ts'
import { holdRequest } from './heldRequest.ts'
import { type OpenPage, openPage, otherIsAt } from './presence.ts'

/** How often a page that is open asks where its notebook stands, in milliseconds: well within the two seconds promised. */
const every = 800
/** A word now and then keeps whatever stands between from closing a connection that says nothing. In rounds. */
const roundsOfSilence = 25

/**
 * Server-sent events (HTML standard, 9.2) for one open page: `stands`, where the notebook stands and whether the other
 * household has the same page open, whenever either changes. It ends with the page, and with the session that it came by.
 */
export function liveStream(
  notebookId: string,
  page: OpenPage,
  session: string,
  request: Request,
): ReadableStream<Uint8Array> {
  const close = openPage(notebookId, page)
  const letGo = holdRequest(request)
  let timer: ReturnType<typeof setTimeout> | undefined
  let over = false
  const stop = () => {
    over = true
    clearTimeout(timer)
    close()
    letGo()
  }
  return new ReadableStream({
    start(controller) {
      const encoder = new TextEncoder()
      const send = (text: string) => controller.enqueue(encoder.encode(text))
      let last = ''
      let silent = 0
      const end = () => {
        if (over) return
        stop()
        controller.close()
      }
      request.signal.addEventListener('abort', end)
      const round = async () => {
        try {
          const [pulse, allowed] = await Promise.all([pulseOf(notebookId), findSession(session)])
          if (over) return
          if (pulse === undefined || allowed?.notebookId !== notebookId) return end()
          const { household, itemKey } = pulse.newest ?? {}
          const now = JSON.stringify({
            pulse: pulse.text,
            by: household,
            itemKey,
            otherIsHere: otherIsAt(notebookId, page),
          })
          if (now !== last) send(`event: stands\ndata: ${now}\n\n`)
          else if (silent >= roundsOfSilence) send(': still here\n\n')
          silent = now !== last || silent >= roundsOfSilence ? 0 : silent + 1
          last = now
          timer = setTimeout(round, every)
        } catch (error) {
          console.error('An open page could not be kept current; its browser asks again.', error)
          end()
        }
      }
      void round()
    },
    cancel: stop,
  })
}
