/** What somebody who was given an address can do with it: a link or an invitation, a reader’s link, a page of a notebook. */
export type PastedAddress =
  | { readonly kind: 'open' | 'read'; readonly token: string }
  | { readonly kind: 'notebook'; readonly notebookId: string }

/** No letter and no invitation with its link in it is longer. */
export const longestPasted = 4000

/**
 * Finds the address in what was pasted: the whole address with whatever stands around it, or its last part alone. Where it
 * was written down, by a name or a number of the install, is not looked at: whether the install knows it is for the store.
 */
export function pastedAddress(text: string): PastedAddress | undefined {
  if (text.length > longestPasted) return undefined
  const found = /\/(open|read)\/([A-Za-z0-9_-]{43})(?![A-Za-z0-9_-])/.exec(text)
  const alone = /^\s*([A-Za-z0-9_-]{43})\s*$/.exec(text)?.[1]
  const kind = found?.[1] === 'read' ? 'read' : 'open'
  const token = found?.[2] ?? alone
  if (token !== undefined) return { kind, token }
  const notebookId = /\/notebook\/([A-Za-z0-9_-]{22})(?![A-Za-z0-9_-])/.exec(text)?.[1]
  return notebookId === undefined ? undefined : { kind: 'notebook', notebookId }
}
