import type { Notebook } from '../../../lib/core/agreement/notebook.ts'
import { hoursByTask, hoursForNoItem, type ItemHours } from '../../../lib/core/hours/hoursByTask.ts'
import type { ExactHours } from '../../../lib/core/hours/ownHours.ts'
import type { ForBoth } from '../../../lib/core/people/household.ts'
import { type SharedItems, shareItems } from '../../../lib/core/shares/statement.ts'
import { booksFigures } from './booksFigures.ts'
import type { Opened } from './opened.ts'

/** Hours by task and household, held against what the books are held against. */
export type BooksHours = {
  readonly notebook: Notebook
  /** Number of the signed revision; undefined where nothing is signed yet. */
  readonly signed: number | undefined
  /** The items that can be shared, of the same notebook. */
  readonly shares: SharedItems
  readonly items: readonly ItemHours[]
  readonly forNoItem: ForBoth<ExactHours>
}

export function booksHours(opened: Opened): BooksHours {
  const { notebook, signed } = booksFigures(opened)
  const shares = shareItems(notebook)
  return {
    notebook,
    signed,
    shares,
    items: hoursByTask(notebook, shares.items, opened.notebook.books.conversions),
    forNoItem: hoursForNoItem(notebook),
  }
}
