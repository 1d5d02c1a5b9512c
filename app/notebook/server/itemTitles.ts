import { agreedItems, itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import type { ProposedItem } from '../../../lib/store/proposals.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'
import { typedText } from './typedText.ts'

/**
 * What each section, gate and common cost is called, by its id. One that is gone is called as in `proposed`, where something
 * was proposed for it, else by its id.
 */
export function itemTitles(
  document: NotebookDocument,
  proposed: readonly Pick<ProposedItem, 'id' | 'item'>[] = [],
): (id: string) => string {
  const titles = new Map(agreedItems(document).map((item) => [item.key, itemTitle(item)]))
  const names = new Map(proposed.map(({ id, item }) => [id, typedText(item.name).trim()]))
  return (id) => titles.get(itemKey(id)) ?? (names.get(id) || id)
}
