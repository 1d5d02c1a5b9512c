import type { ItemKind, Notebook } from '../../core/agreement/notebook.ts'
import { itemTitle } from './names.ts'

/** Where a fault of the shares lies, in a reader's words: `sections[0].share.labour` is "Section 1: Lane, work". */
export function placeOfFault(notebook: Notebook, path: string): string {
  const match = /^(sections|gates|common)\[([0-9]+)\](?:\.share)?\.?(materials|labour|together)?/.exec(path)
  if (match === null) return path === 'caps' ? 'The caps' : 'The notebook'
  const [, list, place, pot] = match
  const index = Number(place)
  const kind = kinds[list ?? ''] ?? 'section'
  const item = { section: notebook.sections, gate: notebook.gates, common: notebook.common }[kind][index]
  const title = itemTitle(kind, index, item?.name ?? '')
  return pot === undefined ? title : `${title}, ${potNames[pot] ?? pot}`
}

const kinds: Readonly<Record<string, ItemKind>> = { sections: 'section', gates: 'gate', common: 'common' }
const potNames: Readonly<Record<string, string>> = {
  materials: 'materials',
  labour: 'work',
  together: 'materials and work together',
}
