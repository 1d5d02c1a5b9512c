import type { ReactNode } from 'react'
import { renderToStaticMarkup } from 'react-dom/server'

/**
 * What React shows, as markup for a test to look in: with plain blanks, since `app/ui/bound` binds each figure to its unit by
 * a no-break blank. That it does is for test/ui/boundFigures.test.ts and test/screens/tornFigures.test.ts.
 */
export function shownMarkup(node: ReactNode): string {
  return plainBlanks(renderToStaticMarkup(node))
}

export function plainBlanks(text: string): string {
  return text.replaceAll('\u00A0', ' ')
}
