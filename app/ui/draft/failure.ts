'use client'

import { unstable_isUnrecognizedActionError, unstable_rethrow } from 'next/navigation'

export type Failure = 'lost' | 'broke' | 'outdated'

/**
 * Why a server action came to nothing: `lost` (no answer), `broke` (the server failed), `outdated` (the page is older
 * than the server). Next's own signals, a redirect for one, are thrown on, after `arrived` was called: the server has
 * taken what was sent.
 */
export function failureOf(error: unknown, arrived?: () => void): Failure {
  try {
    unstable_rethrow(error)
  } catch (signal) {
    arrived?.()
    throw signal
  }
  if (unstable_isUnrecognizedActionError(error)) return 'outdated'
  // Next marks what was thrown on the server with a digest; a failed fetch carries none.
  return typeof error === 'object' && error !== null && 'digest' in error ? 'broke' : 'lost'
}
