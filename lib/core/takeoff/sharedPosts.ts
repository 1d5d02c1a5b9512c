import type { Notebook } from '../agreement/notebook.ts'
import type { Millimetres } from '../amounts/length.ts'
import type { ItemAt, PostLayout } from './postLayout.ts'

/** A post that two items with build-ups share: counted with `item`, borne in halves by it and by `other`. */
export type SharedPost = {
  /** Its place in `PostLayout.posts`. */
  readonly post: number
  readonly at: Millimetres
  readonly item: ItemAt
  readonly other: ItemAt
  /** Ids of the two, for keys that stay the same when items change places. */
  readonly itemId: string
  readonly otherId: string
}

/**
 * The posts at which the fence of two items meets: a corner or an end of two sections, a gate's post that is a section's
 * end too. Where more than two meet, the item that the post is counted with and the first other along the line share it.
 */
export function sharedPosts(notebook: Notebook, layout: PostLayout): readonly SharedPost[] {
  const sections = new Map<number, ItemAt[]>()
  for (const { section, posts } of layout.runs) {
    // The line runs on: of two runs at one post the one before comes first.
    for (const post of new Set([posts[0], posts.at(-1)]))
      if (post !== undefined)
        sections.set(post, [...(sections.get(post) ?? []), { list: 'sections', index: section }])
  }
  return layout.posts.flatMap(({ at, item, gates }, post) => {
    const built = gates
      .filter((index) => notebook.gates[index]?.buildUp !== undefined)
      .map((index): ItemAt => ({ list: 'gates', index }))
    const other = [...(sections.get(post) ?? []), ...built].find((one) => !sameItem(one, item))
    const [itemId, otherId] = [item, other].map((one) => one && notebook[one.list][one.index]?.id)
    return other === undefined || itemId === undefined || otherId === undefined
      ? []
      : [{ post, at, item, other, itemId, otherId }]
  })
}

export function sameItem(one: ItemAt, other: ItemAt): boolean {
  return one.list === other.list && one.index === other.index
}
