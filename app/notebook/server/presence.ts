import type { Household } from '../../../lib/core/people/household.ts'

/** A page that somebody of a household has open: the end of its address, '' for The line. */
export type OpenPage = { readonly household: Household; readonly at: string }

// On globalThis, because a server built by Next holds this file several times over.
const shared = globalThis as { mearingOpenPages?: Map<string, Set<OpenPage>> }

/** Says that a page is open until the answer is called. Nothing of it is stored. */
export function openPage(notebookId: string, page: OpenPage): () => void {
  shared.mearingOpenPages ??= new Map()
  const pages = shared.mearingOpenPages.get(notebookId) ?? new Set()
  shared.mearingOpenPages.set(notebookId, pages.add(page))
  return () => {
    pages.delete(page)
    if (pages.size === 0 && shared.mearingOpenPages?.get(notebookId) === pages)
      shared.mearingOpenPages.delete(notebookId)
  }
}

/** Whether the other household has the same page open. */
export function otherIsAt(notebookId: string, { household, at }: OpenPage): boolean {
  return [...(shared.mearingOpenPages?.get(notebookId) ?? [])].some(
    (page) => page.household !== household && page.at === at,
  )
}
