import type { ReactNode } from 'react'
import { figuresJoined } from '../../lib/words/summary/unbroken.ts'

/** What is shown where it is plain text, with each figure bound to its unit and “no.” to its number; anything else as it is. */
export function joined(shown: ReactNode): ReactNode {
  if (typeof shown !== 'string') return shown
  return figuresJoined(shown).replace(/\b(no\.|No\.) (?=[0-9])/g, '$1\u00A0')
}
