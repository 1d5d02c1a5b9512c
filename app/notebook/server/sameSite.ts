/**
 * Whether a request that changes something comes from a page of this install: its Origin names the host that it was sent
 * to, as Next asks of every server action. A request without one comes from no page of a present-day browser.
 */
export function isFromOwnPage(headers: Headers): boolean {
  const origin = headers.get('origin')
  const host = headers.get('x-forwarded-host')?.split(',')[0]?.trim() || headers.get('host')
  if (origin === null || host === null) return false
  try {
    return new URL(origin).host === host
  } catch {
    return false
  }
}
