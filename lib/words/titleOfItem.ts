import type { ItemKind, Notebook } from '../core/agreement/notebook.ts'
import { itemTitle } from './itemWords.ts'

/** What a section, gate or common cost is called, by its id; the id itself where there is none of it. */
export function titleOfItem(notebook: Pick<Notebook, 'sections' | 'gates' | 'common'>, id: string): string {
  const lists = { section: notebook.sections, gate: notebook.gates, common: notebook.common }
  for (const [kind, items] of Object.entries(lists)) {
    const item = items.find((one) => one.id === id)
    if (item) return itemTitle({ kind: kind as ItemKind, name: item.name, key: `item:${id}` })
  }
  return id
}
