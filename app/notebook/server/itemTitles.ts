import { agreedItems, itemKey } from '../../../lib/core/agreement/agreedItems.ts'
import type { NotebookDocument } from '../../../lib/forms/readNotebook.ts'
import { itemTitle } from '../../../lib/words/itemWords.ts'

/** What each section, gate and common cost is called, by its id; one that is gone is called by its id. */
export function itemTitles(document: NotebookDocument): (id: string) => string {
  const titles = new Map(agreedItems(document).map((item) => [item.key, itemTitle(item)]))
  return (id) => titles.get(itemKey(id)) ?? id
}
