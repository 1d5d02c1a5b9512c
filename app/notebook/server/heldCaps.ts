import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import type { ForBoth } from '../../../lib/core/people/household.ts'

/** Which caps buying is held against, and who has marked them. */
export type HeldCaps = {
  readonly caps: Notebook['caps']
  readonly marked: ForBoth<boolean>
  /** Those that all have signed; those of the draft that both have marked since; those of a draft while nothing is signed. */
  readonly from: 'signed' | 'marked since' | 'draft'
}

/**
 * The caps that buying is held against: those that were signed, until both have marked those of the draft; before anything
 * is signed those of the draft, with whoever has marked them.
 *
 * @param books what the books are held against: what was signed or, before that, the draft
 * @param signed whether that is signed by all, and so marked by both
 * @param draft the caps of the draft, and who has marked them
 */
export function heldCaps(
  books: Pick<Notebook, 'caps'>,
  signed: boolean,
  draft: { readonly caps: Notebook['caps']; readonly marked: ForBoth<boolean> },
): HeldCaps {
  const both = { a: true, b: true }
  if (!signed) return { caps: draft.caps, marked: draft.marked, from: 'draft' }
  if (!(draft.marked.a && draft.marked.b) || sameCaps(draft.caps, books.caps))
    return { caps: books.caps, marked: both, from: 'signed' }
  return { caps: draft.caps, marked: both, from: 'marked since' }
}

export function sameCaps(one: Notebook['caps'], other: Notebook['caps']): boolean {
  return one.a === other.a && one.b === other.b
}
