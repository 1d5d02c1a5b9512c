import type { Notebook } from '../../core/agreement/notebook.ts'
import type { ItemAt } from '../../core/takeoff/postLayout.ts'
import { type SharedPost, sameItem } from '../../core/takeoff/sharedPosts.ts'
import { itemTitle } from '../itemWords.ts'
import { stationWords } from '../length.ts'
import { spokenList } from '../summary/names.ts'

/** Which posts an item shares with which others, one sentence for each of them; empty where it shares none. */
export function sharedPostSentences(
  notebook: Notebook,
  shared: readonly SharedPost[],
  item: ItemAt,
): readonly string[] {
  const places = new Map<string, { other: ItemAt; at: string[] }>()
  for (const post of shared) {
    const [mine, theirs] = sameItem(post.item, item) ? [post.item, post.other] : [post.other, post.item]
    if (!sameItem(mine, item)) continue
    const key = `${theirs.list} ${theirs.index}`
    const so = places.get(key) ?? { other: theirs, at: [] }
    places.set(key, { ...so, at: [...so.at, stationWords(post.at, notebook.units)] })
  }
  return [...places.values()].map(({ other, at }) => {
    const count = at.length === 1 ? '1 post' : `${at.length} posts`
    const is = at.length === 1 ? 'is' : 'are'
    const half = at.length === 1 ? 'one half' : 'one half of each'
    return `${count} at ${spokenList(at)} ${is} shared with ${titleOf(notebook, other)}: ${half} here.`
  })
}

function titleOf(notebook: Notebook, { list, index }: ItemAt): string {
  const item = notebook[list][index]
  const kind = list === 'gates' ? 'gate' : 'section'
  return itemTitle({ kind, name: item?.name ?? '', key: `item:${item?.id ?? ''}` })
}
