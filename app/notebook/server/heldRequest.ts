/** On globalThis, because a server built by Next holds this file several times over. */
const shared = globalThis as { mearingHeldRequests?: Set<Request> }

/**
 * Holds a request for as long as somebody listens to its signal, and gives what lets go of it. In Node 20 a request hears of
 * the end of its connection through a weak reference only: once nothing else holds it, the garbage collector may take it, and
 * whoever listens never hears.
 */
export function holdRequest(request: Request): () => void {
  shared.mearingHeldRequests ??= new Set()
  const held = shared.mearingHeldRequests
  held.add(request)
  return () => held.delete(request)
}

/** How many requests are held now. */
export function heldRequests(): number {
  return shared.mearingHeldRequests?.size ?? 0
}
