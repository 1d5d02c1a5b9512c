import type { Gate, Notebook, Section } from './notebook.ts'

/** What is told of a post, a rail, a frame or a piece at hand. A wall makes it a tube. */
type Stock = { readonly what: string; readonly wall: string; readonly reclaimed?: boolean }

/**
 * Whether old tube could be used: a build-up, a cost line, a note or a piece at hand names tube, pipe or stock used before,
 * or nothing is known yet of what the fence is made of.
 */
export function mayUseOldTube({ sections, gates, common, inventory }: Notebook): boolean {
  const items = [...sections, ...gates, ...common]
  const stock: readonly Stock[] = [
    ...sections.flatMap(stockOfSection),
    ...gates.flatMap(stockOfGate),
    ...inventory,
  ]
  const made = [
    ...items.flatMap(({ materials }) => materials.map(({ what }) => what)),
    ...sections.map(({ infill }) => infill),
    ...stock.map(({ what }) => what),
  ].filter((text) => text.trim() !== '')
  if (made.length === 0 && stock.length === 0) return true
  if (stock.some(({ wall, reclaimed }) => wall !== '' || reclaimed === true)) return true
  return [...made, ...items.map(({ notes }) => notes)].some((text) => usedOrTube.test(text))
}

/** A word too many shows a caution too many, which does no harm. */
const usedOrTube = /\b(tub(e|es|ing|ular)|pipes?|reclaimed|salvaged|second-hand|scrap)\b/i

function stockOfSection({ buildUp }: Section): readonly Stock[] {
  if (buildUp === undefined) return []
  const { posts, endPosts, cornerPosts, gatePosts, rails } = buildUp
  return [posts, endPosts, cornerPosts, gatePosts, rails].filter((one) => one !== undefined)
}

function stockOfGate({ buildUp }: Gate): readonly Stock[] {
  if (buildUp === undefined) return []
  return [buildUp.frame, buildUp.header, buildUp.posts].filter((one) => one !== undefined)
}
