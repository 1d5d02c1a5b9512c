'use client'

import { unstable_isUnrecognizedActionError, unstable_rethrow } from 'next/navigation'

/**
 * Why a server action came to nothing: `lost` (no answer), `broke` (the server failed), `outdated` (the page is older
 * than the server). Next's own signals, a redirect for one, are thrown on.
 */
export function failureOf(error: unknown): 'lost' | 'broke' | 'outdated' {
  unstable_rethrow(error)
  if (unstable_isUnrecognizedActionError(error)) return 'outdated'
  // Next marks what was thrown on the server with a digest; a failed fetch carries none.
  return typeof error === 'object' && error !== null && 'digest' in error ? 'broke' : 'lost'
}
